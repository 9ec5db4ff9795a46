import { z } from 'zod';
import { probeSourceSchema } from '../contract/index.ts';
import {
  correctionSchema,
  linkChangeSchema,
  markBodySchema,
  markSchema,
  runSettingsSchema,
} from '../run/index.ts';
import { alarmStateSchema, recordedAlarmRecordSchema, runEventSchema } from '../snapshot/index.ts';
import { stageSpanSchema } from '../stages/index.ts';
import { packedReadingSchema } from './packed-reading.ts';

/** The run log's format: a reader refuses a higher number than it knows. */
export const runLogVersion = 1;

const timeS = z.number().nonnegative();

/** What makes a log readable on its own: settings, models and the scale of its time. */
export const logHeaderSchema = z.object({
  format: z.literal('still-head-run-log'),
  version: z.literal(runLogVersion),
  runId: z.string(),
  startedAtIso: z.string(),
  settings: runSettingsSchema,
  appVersion: z.string(),
  modelVersion: z.string(),
  /** Run seconds per real second; 1 except in rehearsals. */
  timeScale: z.number().positive(),
  rehearsal: z.boolean(),
  source: probeSourceSchema.nullable(),
  origin: z.enum(['recorded', 'imported']),
});

/** What the monitor concluded, as it happened. The snapshot is kept as it was shown. */
export const loggedChangeSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('stage-entered'), timeS, span: stageSpanSchema }),
  z.object({
    kind: z.literal('alarm-changed'),
    timeS,
    record: recordedAlarmRecordSchema,
    state: alarmStateSchema,
    snapshot: z.unknown(),
  }),
  z.object({ kind: z.literal('event'), timeS, event: runEventSchema }),
]);

/** The kinds of record, without the numbers and checksums that every record carries. */
export const logBodySchema = z.discriminatedUnion('kind', [
  /** First record of the first file of a run. */
  z.object({ kind: z.literal('header'), header: logHeaderSchema }),
  /** First record of every further file, and why there is one; the header is repeated. */
  z.object({
    kind: z.literal('segment'),
    segment: z.number().int().min(2),
    because: z.string(),
    header: logHeaderSchema,
  }),
  z.object({ kind: z.literal('readings'), readings: z.array(packedReadingSchema).min(1) }),
  markSchema,
  linkChangeSchema,
  z.object({ kind: z.literal('change'), change: loggedChangeSchema }),
  /** The computer slept or its clock was set, and by how much. */
  z.object({
    kind: z.literal('clock'),
    timeS,
    sleptS: z.number(),
    wallStepS: z.number(),
  }),
  /** Readings that stand nowhere. */
  z.object({
    kind: z.literal('dropped'),
    timeS,
    readings: z.number().int().min(1),
    fromS: timeS,
    toS: timeS,
    /**
     * `probe-process`: more were heard than could be handed on; `disk`: it took nothing until memory was full. Absent in records of
     * older versions, which tell of the disk alone.
     */
    where: z.enum(['probe-process', 'disk']).optional(),
  }),
  /** The monitor failed; readings are recorded all the same. */
  z.object({ kind: z.literal('monitor-failed'), timeS, message: z.string() }),
  /** The program was ended in mid-run and started again: what follows was written by this one. */
  z.object({
    kind: z.literal('continued'),
    timeS,
    /** Since the last record before it [s]. */
    closedS: z.number().nonnegative(),
    /**
     * The monotonic clock at `timeS` [s]: the probe was connected after it, and the record written after that. Absent in records of older
     * versions.
     */
    clockS: z.number().optional(),
    appVersion: z.string(),
    modelVersion: z.string(),
    /** The probe may have come back under another name. */
    source: probeSourceSchema,
  }),
  z.object({
    kind: z.literal('end'),
    timeS,
    how: z.enum(['clean', 'cut-off']),
    /** There where the disk had not taken all that stands before it; absent where all was on the disk before the end was written. */
    unsaved: z.literal(true).optional(),
  }),
  z.object({
    /** A measurement made after the run, or the withdrawal of one; ids go on from those of the run. */
    kind: z.literal('late-mark'),
    markId: z.number().int().min(1),
    mark: markBodySchema,
  }),
  /** What was said wrongly of the run, put right later; all count, in their order. */
  z.object({ kind: z.literal('correction'), correction: correctionSchema }),
  /** A person's name and notes for the run, given later; the last one counts. */
  z.object({ kind: z.literal('label'), name: z.string(), notes: z.string() }),
]);

export type LogHeader = z.infer<typeof logHeaderSchema>;
export type LoggedChange = z.infer<typeof loggedChangeSchema>;
export type LogBody = z.infer<typeof logBodySchema>;

/** The numbers that every record carries. */
export interface LogStamp {
  /** Counts up by one within a run. */
  readonly seq: number;
  /** Monotonic clock when written [s]. */
  readonly monoS: number;
  /** Wall clock when written, milliseconds since 1970. */
  readonly wallMs: number;
}

export interface LogRecord {
  readonly stamp: LogStamp;
  /** `unknown`: whole, but written by a newer version in a way that this one does not know. */
  readonly body: LogBody | { readonly kind: 'unknown' };
}
