import { z } from 'zod';

const count = z.number().int().min(0);

/** What only the window knows of itself. */
export const windowFactsSchema = z.strictObject({
  browser: z.string().max(400),
  language: z.string().max(40),
  widthPx: count,
  heightPx: count,
  /** How this person likes the window: theme, decimal sign and the like. */
  preferences: z.record(z.string().max(40), z.union([z.string().max(40), z.number(), z.boolean()])),
});

const probeFactsSchema = z.strictObject({
  state: z.string(),
  /** `serial`, `several` or `demo`; null where none is connected. */
  kind: z.string().nullable(),
  /** How each is listened to. */
  lines: z.array(
    z.strictObject({ language: z.string(), baudRate: z.number(), parity: z.string().nullable() }),
  ),
  channels: z.array(z.string()),
  readingsPerS: z.number(),
  rejectedLines: count,
  droppedBytes: count,
  droppedReadings: count,
  thinnedHeadReadings: count,
  problem: z.string().nullable(),
  advice: z.string().nullable(),
});

/**
 * What whoever mends the program needs to know of a computer that is not at hand. Nothing in it leads to a person: no names, no folders,
 * no serial numbers, no readings; names of runs only where the person says so.
 */
export const problemReportSchema = z.strictObject({
  format: z.literal('still-head-problem-report'),
  version: z.literal(1),
  madeAtIso: z.iso.datetime(),
  program: z.strictObject({
    version: z.string(),
    modelVersion: z.string(),
    shell: z.string(),
    runningForS: z.number(),
  }),
  computer: z.strictObject({
    platform: z.string(),
    release: z.string(),
    architecture: z.string(),
    node: z.string(),
    processors: count,
    memoryMb: z.number(),
    freeMemoryMb: z.number(),
    runningForS: z.number(),
  }),
  /** Where runs are kept. */
  folder: z.strictObject({
    freeMb: z.number().nullable(),
    /** False where another running program has it, or it can't be written. */
    mayWrite: z.boolean(),
    runs: count.nullable(),
    cutOffRuns: count,
    unreadableRuns: count,
    /** Why not, each reason once, with what the system said. */
    unreadableBecause: z.array(z.string()),
    damagedRecords: count,
    /** Files of earlier versions and damaged ones, and what was put aside. */
    doubtfulFiles: z.array(z.string()),
  }),
  /** Null where no services run. */
  probe: probeFactsSchema.nullable(),
  ports: z.array(
    z.strictObject({
      vendorId: z.string().nullable(),
      productId: z.string().nullable(),
      likelyProbe: z.boolean(),
    }),
  ),
  recording: z
    .strictObject({
      state: z.string(),
      problem: z.string().nullable(),
      adviceStopped: z.string().nullable(),
      lostReadings: count,
    })
    .nullable(),
  /** The newest last; what came again and again stands once. */
  recentProblems: z.array(
    z.strictObject({ lastAtIso: z.string(), times: count, what: z.string() }),
  ),
  window: windowFactsSchema.nullable(),
  /** Only where the person said so. */
  runNames: z.array(z.string()).optional(),
});

export const problemReportRequests = {
  /** Made anew each time; nothing is kept or sent. Only for who may do something about it. */
  'problem-report/make': {
    commands: true,
    body: z.strictObject({ withRunNames: z.boolean(), window: windowFactsSchema.nullable() }),
    answer: problemReportSchema,
  },
} as const;
