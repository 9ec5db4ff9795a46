import { z } from 'zod';
import { serialSourceSchema } from '../frame/index.ts';
import { channelSchema, readingSchema } from '../run/index.ts';
import { wordingSchema } from '../wording/index.ts';
import { serviceProblemSchema } from './service-problem.ts';

/** A serial port as the operating system lists it. */
export const portInfoSchema = z.strictObject({
  path: z.string(),
  manufacturer: z.string().nullable(),
  vendorId: z.string().nullable(),
  productId: z.string().nullable(),
  serialNumber: z.string().nullable(),
  /** Has a USB identity, so it may be a probe; bare motherboard ports are hidden unless asked for. */
  likelyProbe: z.boolean(),
  /** How this very device was understood the last time; see `serialSourceSchema`. */
  remembered: z.lazy(() => serialSourceSchema).optional(),
});

/** The built-in rehearsal rig: a simulated still speaking through a real pty where there is one. */
export const demoSourceSchema = z.strictObject({
  kind: z.literal('demo'),
  rig: z.string().max(60).default('glass-bead-column'),
  timeScale: z.number().min(1).max(240).default(20),
  seed: z
    .number()
    .int()
    .min(0)
    .max(2 ** 32 - 1)
    .default(1),
});

/** Several probes at once, on one map of channels; the first to bring a channel keeps its name. */
export const severalSourceSchema = z.strictObject({
  kind: z.literal('several'),
  probes: z.array(serialSourceSchema).min(2).max(4),
  timeScale: z.number().min(1).max(240).default(1),
});

export const probeSourceSchema = z.discriminatedUnion('kind', [
  serialSourceSchema,
  demoSourceSchema,
  severalSourceSchema,
]);

/** What trying speeds and languages on one port has found. */
export const probeFindingSchema = z.strictObject({
  /** Ready to connect to; null when nothing was understood. */
  source: serialSourceSchema.nullable(),
  /** Lines heard in that language, printable characters only. */
  heard: z.array(z.string()),
  /** One plain sentence on what was found, or on what was tried in vain. */
  because: z.string(),
  /** What that sentence was made from, to say it in another language. */
  wording: wordingSchema.optional(),
});

const channelOriginSchema = z.strictObject({
  channel: channelSchema,
  probe: z.number().int().min(0),
  own: channelSchema,
});

export const probeStatusSchema = z.strictObject({
  /** `starting`: the process that reads serial ports is not up yet; what was asked for is kept until it is. */
  state: z.enum(['none', 'starting', 'connecting', 'hearing', 'silent', 'lost', 'unreadable']),
  source: probeSourceSchema.nullable(),
  /** Where the bytes really come from, e.g. the pty path of the demo rig. */
  path: z.string().nullable(),
  /** Which device brings the head: named alike wherever it is plugged in, as far as it says who it is. */
  device: z.string().nullable().optional(),
  /** The last whole line heard, printable characters only. */
  lastLine: z.string().nullable(),
  /** The last few lines heard, oldest first: what a pattern can be tried on. */
  recentLines: z.array(z.string()).optional(),
  /** What the probe says it is, where it can be asked. */
  identity: z.string().nullable().optional(),
  channels: z.array(channelSchema),
  /** With several probes: which of them (by its place in the source) brings a channel, and under what name of its own. */
  origins: z.array(channelOriginSchema).optional(),
  latest: z.array(readingSchema),
  readingsPerS: z.number(),
  rejectedLines: z.number().int(),
  droppedBytes: z.number().int(),
  /** Readings of other channels given up because more came than can be taken; never the head's. */
  droppedReadings: z.number().int().optional(),
  /** Readings of the head left out of a queue of tens of thousands: every second of the older half. */
  thinnedHeadReadings: z.number().int().optional(),
  /** What has run into the simulated receiver of a rehearsal since it was put there [mL]. */
  rehearsedReceiverMl: z.number().nonnegative().optional(),
  problem: serviceProblemSchema.nullable(),
  /** The probe that a rehearsal took the place of, where it could not be opened again and nothing is connected. */
  notBack: z.strictObject({ source: probeSourceSchema, problem: serviceProblemSchema }).optional(),
  /** One plain sentence about what is heard and what to try. */
  advice: z.string().nullable(),
  /** What that was made from, for windows in other languages. */
  wording: wordingSchema.optional(),
});

export type PortInfo = z.infer<typeof portInfoSchema>;
export type ProbeSource = z.infer<typeof probeSourceSchema>;
export type ProbeStatus = z.infer<typeof probeStatusSchema>;
