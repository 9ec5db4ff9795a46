import { z } from 'zod';
import { channelSchema } from '../run/index.ts';

/** Line languages a probe may speak. `auto` listens and decides. */
export const lineLanguageSchema = z.enum([
  'auto',
  'plain-text',
  'json-lines',
  'scpi',
  'modbus-rtu',
  'balance',
  'own-pattern',
]);

export const baudRates = [1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200, 230400] as const;

/** One number in a probe that speaks Modbus: where it lies, how it is written, what it means. */
export const modbusRegisterSchema = z.strictObject({
  channel: channelSchema.default('head'),
  /** Counted from 0, as on the wire (register 30001 or 40001 in many manuals is 0 here). */
  address: z.number().int().min(0).max(65_535).default(0),
  type: z
    .enum(['int16', 'uint16', 'int32', 'int32-swapped', 'float32', 'float32-swapped'])
    .default('int16'),
  /** Number on the wire × scale = number in the source's unit. */
  scale: z.number().min(1e-6).max(1e6).default(0.1),
});

/** What to ask a Modbus probe for; only reading functions exist here. */
export const modbusSettingsSchema = z.strictObject({
  unitId: z.number().int().min(1).max(247).default(1),
  functionCode: z.union([z.literal(3), z.literal(4)]).default(4),
  registers: z.array(modbusRegisterSchema).min(1).max(8),
});

/** A SCPI question: printable, ends in a question mark, and one question only. */
export const scpiQuestionSchema = z
  .string()
  .regex(/^[*:A-Za-z][\x20-\x3a\x3c-\x7e]{0,98}\?[\x20-\x3a\x3c-\x7e]{0,60}$/);

/** Seconds between two questions to a probe that must be asked. */
export const askEveryRangeS = { low: 0.1, high: 60 } as const;

/** How the raw numbers of a serial probe become readings; each field has a default. */
export const serialSourceSchema = z.strictObject({
  kind: z.literal('serial'),
  path: z.string().min(1).max(400),
  baudRate: z.number().int().min(300).max(3_000_000).default(115_200),
  language: lineLanguageSchema.default('auto'),
  /** Even parity is the Modbus standard's default; nearly everything else uses none. */
  parity: z.enum(['none', 'even', 'odd']).optional(),
  /** For `own-pattern`: a pattern such as `{head} C {pot} C`. */
  pattern: z.string().max(400).nullable().default(null),
  unit: z.enum(['°C', '°F', 'K', 'ohm-pt100', 'ohm-pt1000']).default('°C'),
  decimalComma: z.boolean().default(false),
  /** For `scpi`: what to ask; without it the usual questions are tried. */
  question: scpiQuestionSchema.nullable().optional(),
  /** For `modbus-rtu`; without it one register with tenths of a degree. */
  modbus: modbusSettingsSchema.nullable().optional(),
  /** For the languages that ask: seconds between questions; 1 without it. */
  askEveryS: z.number().min(askEveryRangeS.low).max(askEveryRangeS.high).optional(),
  /** Channels under other names: what the probe calls `pot` may hang in the `head`. */
  channels: z.record(channelSchema, channelSchema).optional(),
  /** Rehearsals with a sped-up virtual probe: run seconds per real second. */
  timeScale: z.number().min(1).max(240).default(1),
});

export type SerialSource = z.infer<typeof serialSourceSchema>;
