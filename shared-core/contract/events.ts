import { z } from 'zod';
import { linkChangeSchema, markSchema, readingSchema } from '../run/index.ts';
import { snapshotSchema } from '../snapshot/index.ts';
import { wordingSchema } from '../wording/index.ts';
import { packProgressSchema } from './exchange-requests.ts';
import { keptWarmSchema } from './kept-warmth.ts';
import { portInfoSchema, probeStatusSchema } from './probe-schemas.ts';
import { recordingStatusSchema } from './run-schemas.ts';

/** What the service tells every window by itself; at most twenty-five of a kind a second. */
export const events = {
  ports: z.strictObject({ ports: z.array(portInfoSchema) }),
  probe: probeStatusSchema,
  recording: recordingStatusSchema,
  /** What is thought of the running run now; a window that shows another run drops it. */
  snapshot: z.strictObject({
    runId: z.string(),
    snapshot: snapshotSchema,
    /** What its texts were made from, for windows in other languages. */
    wording: wordingSchema.optional(),
    /** How many strengths have been told so far: a window that knows of fewer asks for them. */
    estimatesTold: z.number().int(),
  }),
  pack: packProgressSchema,
  /** How the ferment that is kept warm stands; null once none is. */
  warmth: z.strictObject({ kept: keptWarmSchema.nullable() }),
  /** New inputs of the running run since the last such event, in order. `fromIndex` shows gaps. */
  inputs: z.strictObject({
    runId: z.string(),
    fromIndex: z.number().int(),
    inputs: z.array(z.discriminatedUnion('kind', [readingSchema, markSchema, linkChangeSchema])),
  }),
} as const;

export type EventName = keyof typeof events;
export type EventBody<N extends EventName> = z.output<(typeof events)[N]>;
