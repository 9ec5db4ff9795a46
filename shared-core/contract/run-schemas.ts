import { z } from 'zod';
import { quantitySchema } from '../bookkeeping/index.ts';
import { markSchema, runInputSchema, runSettingsSchema } from '../run/index.ts';
import { snapshotSchema } from '../snapshot/index.ts';
import { wordingSchema } from '../wording/index.ts';
import { serviceProblemSchema } from './service-problem.ts';

/** Why a run can't be opened. Its folder is left as it is, and what can be read of its files can still be saved. */
export const unreadableSchema = z.strictObject({
  /**
   * `header-lost`: no copy of it can be read, or a newer version wrote it; `nothing-recorded`: it was cut off before its header was saved, and
   * nothing is recorded before that; `log-missing`: the folder holds no record;
   * `not-permitted`: this account may not read it; `read-failed`: the disk does not give it.
   */
  why: z.enum(['header-lost', 'nothing-recorded', 'log-missing', 'not-permitted', 'read-failed']),
  /** What the operating system said, for technicians; empty where it was not asked. */
  message: z.string(),
});

/** One line of the run library; derived, so it can always be rebuilt from the log. */
export const runSummarySchema = z.strictObject({
  runId: z.string(),
  name: z.string(),
  notes: z.string(),
  startedAtIso: z.string(),
  durationS: z.number(),
  readings: z.number().int(),
  ended: z.enum(['clean', 'cut-off', 'recording']),
  /** There where what can be read of it is perhaps not all on the disk. */
  unsure: z.literal(true).optional(),
  rehearsal: z.boolean(),
  /** Taken in from a file of another logger; absent in summaries of older versions. */
  imported: z.boolean().optional(),
  /** Its mean with all that is in doubt of it [°C], k = 1; null where the head never held. */
  plateau: quantitySchema.nullable(),
  heatOffCalledS: z.number().nullable(),
  /** What was put right after the run, in sentences; absent in summaries of older versions. */
  corrections: z.array(z.string()).optional(),
  /** What is missing from the record, or was missing in the run itself, and why, in sentences; absent in summaries of older versions. */
  leftOut: z.array(z.string()).optional(),
  /** What those sentences were made from; absent without any. */
  wording: wordingSchema.optional(),
  /** Records that no file of it holds whole. */
  damagedRecords: z.number().int(),
  /** Null for a run that can be opened. */
  unreadable: unreadableSchema.nullable(),
});

/** A page of a recorded (or running) run's inputs, in the order the monitor saw them. */
export const runPageSchema = z.strictObject({
  summary: runSummarySchema,
  settings: runSettingsSchema,
  inputs: z.array(runInputSchema),
  /** Measurements made after the run, as marks at its end; the monitor never saw them. */
  lateMarks: z.array(markSchema).optional(),
  /** First input not in this page, or null at the end. */
  nextIndex: z.number().int().nullable(),
  /** When the run ended, or the last moment known. */
  endS: z.number(),
  /** What stood at the end of a run that is over and not all saved yet: no event tells it any more, and no other page of the run has it. */
  endSnapshot: snapshotSchema.optional(),
  wording: wordingSchema.optional(),
});

/** A run that has ended, of which the disk has not taken all: it is in memory whole, and saved as soon as the disk takes it. */
export const notSavedRunSchema = z.strictObject({
  runId: z.string(),
  name: z.string(),
  /** When it ended, and up to when it is on the disk, in seconds of its own time. */
  endedS: z.number(),
  savedToS: z.number(),
  problem: serviceProblemSchema,
});

/** What the recorder has safely on disk. `savedToS` moves only after a sync. */
export const recordingStatusSchema = z.strictObject({
  state: z.enum(['idle', 'recording', 'failed']),
  runId: z.string().nullable(),
  startedAtIso: z.string().nullable(),
  savedToS: z.number().nullable(),
  /** When the run ended, while what was heard last is still on its way to the disk; absent before, and with the run when all is saved. */
  endedS: z.number().optional(),
  /** Why it failed, or what endangers it while it goes on; while nothing is recorded, only that the folder of the runs is gone. */
  problem: serviceProblemSchema.nullable(),
  /** What made the monitor fail: recording goes on, advice has stopped. Absent while it works. */
  adviceStopped: z.string().optional(),
  /** Readings that found no room while the disk took nothing; absent while there are none. */
  lostReadings: z.number().int().optional(),
  /** Runs that have ended and are not saved; absent while there are none. */
  notSaved: z.array(notSavedRunSchema).optional(),
});

export type RunSummary = z.infer<typeof runSummarySchema>;
