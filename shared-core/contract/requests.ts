import { z } from 'zod';
import { correctionSchema, runSettingsSchema } from '../run/index.ts';
import { verdictsSchema } from '../snapshot/index.ts';
import { benchMarkSchema } from './bench-mark.ts';
import { classViewRequests } from './class-view.ts';
import { exchangeRequests } from './exchange-requests.ts';
import { fermentRequests } from './kept-ferments.ts';
import { keptFilesRequests } from './kept-files.ts';
import { rigRequests } from './kept-rigs.ts';
import { warmthRequests } from './kept-warmth.ts';
import {
  portInfoSchema,
  probeFindingSchema,
  probeSourceSchema,
  probeStatusSchema,
} from './probe-schemas.ts';
import { problemReportRequests } from './problem-report.ts';
import { recordedChangeSchema } from './recorded-change.ts';
import { recordingStatusSchema, runPageSchema, runSummarySchema } from './run-schemas.ts';
import { secondScreenSchema } from './second-screen.ts';
import { unfinishedRunSchema } from './unfinished-run.ts';

const nothing = z.strictObject({});
const runId = z.string().min(1).max(120);

/**
 * Every request a window may make: its body and its answer, one table for both shells.
 * `commands` says whether it changes anything: a second, viewing window may not.
 */
export const requests = {
  'app/describe': {
    commands: false,
    body: nothing,
    answer: z.strictObject({
      version: z.string(),
      modelVersion: z.string(),
      shell: z.enum(['electron', 'loopback']),
      platform: z.string(),
      runsFolder: z.string(),
      mayCommand: z.boolean(),
      /** How this window gets a second one that only watches; null in such a window. */
      secondScreen: secondScreenSchema.nullable(),
      /** A pupil's own screen: it sees the run under way and nothing else. */
      onlooker: z.boolean().optional(),
    }),
  },
  /** Opens the second screen where the shell does it; the other way is an address. */
  'app/open-second-screen': { commands: true, body: nothing, answer: nothing },
  /** Makes the folder of the runs where it is gone; nobody but a person can know that it will not come back with its drive. */
  'folder/make-anew': { commands: true, body: nothing, answer: nothing },
  'ports/list': {
    commands: false,
    body: nothing,
    answer: z.strictObject({ ports: z.array(portInfoSchema) }),
  },
  'probe/status': { commands: false, body: nothing, answer: probeStatusSchema },
  'probe/connect': {
    commands: true,
    body: z.strictObject({ source: probeSourceSchema }),
    answer: probeStatusSchema,
  },
  /** Tries speeds and languages on the port the person points at; takes up to half a minute. */
  'probe/find': {
    commands: true,
    body: z.strictObject({ path: z.string().min(1).max(400) }),
    answer: probeFindingSchema,
  },
  'probe/disconnect': { commands: true, body: nothing, answer: nothing },
  'run/status': { commands: false, body: nothing, answer: recordingStatusSchema },
  'run/start': {
    commands: true,
    body: z.strictObject({ settings: runSettingsSchema }),
    answer: z.strictObject({ runId: z.string() }),
  },
  /** The run that was under way when the program was last ended, while it makes sense to go on; only for who may do that. */
  'run/unfinished': {
    commands: true,
    body: nothing,
    answer: z.strictObject({ run: unfinishedRunSchema.nullable() }),
  },
  /** Goes on with it, with the probe that is connected or else the one it had. */
  'run/continue': {
    commands: true,
    body: z.strictObject({ runId }),
    answer: z.strictObject({ runId: z.string() }),
  },
  'run/stop': { commands: true, body: nothing, answer: z.strictObject({ runId: z.string() }) },
  'run/mark': {
    commands: true,
    body: z.strictObject({ mark: benchMarkSchema }),
    answer: z.strictObject({ markId: z.number().int(), timeS: z.number() }),
  },
  'runs/list': {
    commands: false,
    body: nothing,
    answer: z.strictObject({ runs: z.array(runSummarySchema) }),
  },
  'runs/read': {
    commands: false,
    body: z.strictObject({ runId, fromIndex: z.number().int().min(0) }),
    answer: runPageSchema,
  },
  /** What was concluded at the time: what a replay is compared with. */
  'runs/changes': {
    commands: false,
    body: z.strictObject({ runId }),
    answer: z.strictObject({
      changes: z.array(recordedChangeSchema),
      /** Of the monitors that concluded it. */
      modelVersions: z.array(z.string()),
      /** The strengths told so far, of the run under way alone: they are not recorded, a replay tells them again. */
      estimates: verdictsSchema.shape.estimates.optional(),
    }),
  },
  /** Puts right what was said wrongly of a run. The record stays as it was; the correction is kept beside it. */
  'runs/correct': {
    commands: true,
    body: z.strictObject({ runId, correction: correctionSchema }),
    answer: runSummarySchema,
  },
  'runs/rename': {
    commands: true,
    body: z.strictObject({
      runId,
      name: z.string().min(1).max(120),
      notes: z.string().max(4000),
    }),
    answer: runSummarySchema,
  },
  'runs/trash': { commands: true, body: z.strictObject({ runId }), answer: nothing },
  /** Runs that were taken out of the library. */
  'runs/trashed': {
    commands: false,
    body: z.strictObject({}),
    answer: z.strictObject({ runs: z.array(runSummarySchema) }),
  },
  /** Puts one of them back, under another name where its own is taken. */
  'runs/restore': {
    commands: true,
    body: z.strictObject({ runId }),
    answer: z.strictObject({ runId }),
  },
  ...classViewRequests,
  ...exchangeRequests,
  ...rigRequests,
  ...keptFilesRequests,
  ...problemReportRequests,
  ...fermentRequests,
  ...warmthRequests,
} as const;

export type RequestName = keyof typeof requests;
export type RequestBody<N extends RequestName> = z.input<(typeof requests)[N]['body']>;
export type RequestAnswer<N extends RequestName> = z.output<(typeof requests)[N]['answer']>;
