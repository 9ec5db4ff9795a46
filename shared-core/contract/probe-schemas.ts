import { z } from 'zod';
import { channelSchema, readingSchema } from '../run/index.ts';
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
});

/** Line languages a probe may speak. `auto` listens and decides. */
export const lineLanguageSchema = z.enum([
  'auto',
  'plain-text',
  'json-lines',
  'scpi',
  'modbus-rtu',
  'own-pattern',
]);

export const baudRates = [1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200, 230400] as const;

/** How the raw numbers of a serial probe become readings; each field has a default. */
export const serialSourceSchema = z.strictObject({
  kind: z.literal('serial'),
  path: z.string().min(1).max(400),
  baudRate: z.number().int().min(300).max(3_000_000).default(115_200),
  language: lineLanguageSchema.default('auto'),
  /** For `own-pattern`: a pattern such as `{head} C {pot} C`. */
  pattern: z.string().max(400).nullable().default(null),
  unit: z.enum(['°C', '°F', 'K', 'ohm-pt100', 'ohm-pt1000']).default('°C'),
  decimalComma: z.boolean().default(false),
  /** Rehearsals with a sped-up virtual probe: run seconds per real second. */
  timeScale: z.number().min(1).max(240).default(1),
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

export const probeSourceSchema = z.discriminatedUnion('kind', [
  serialSourceSchema,
  demoSourceSchema,
]);

export const probeStatusSchema = z.strictObject({
  state: z.enum(['none', 'connecting', 'hearing', 'silent', 'lost', 'unreadable']),
  source: probeSourceSchema.nullable(),
  /** Where the bytes really come from, e.g. the pty path of the demo rig. */
  path: z.string().nullable(),
  /** The last whole line heard, printable characters only. */
  lastLine: z.string().nullable(),
  channels: z.array(channelSchema),
  latest: z.array(readingSchema),
  readingsPerS: z.number(),
  rejectedLines: z.number().int(),
  droppedBytes: z.number().int(),
  problem: serviceProblemSchema.nullable(),
  /** One plain sentence about what is heard and what to try. */
  advice: z.string().nullable(),
});

export type PortInfo = z.infer<typeof portInfoSchema>;
export type LineLanguage = z.infer<typeof lineLanguageSchema>;
export type SerialSource = z.infer<typeof serialSourceSchema>;
export type DemoSource = z.infer<typeof demoSourceSchema>;
export type ProbeSource = z.infer<typeof probeSourceSchema>;
export type ProbeStatus = z.infer<typeof probeStatusSchema>;
