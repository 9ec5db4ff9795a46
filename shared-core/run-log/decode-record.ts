import { z } from 'zod';
import { parseJson } from '../result/index.ts';
import { checksumLength, checksumOfLine } from './checked-line.ts';
import { type LogBody, type LogRecord, logBodySchema } from './log-record.ts';
import { packedReadingSchema } from './packed-reading.ts';

const envelopeSchema = z.object({
  seq: z.number().int().nonnegative(),
  prev: z.string().length(checksumLength),
  monoS: z.number(),
  wallMs: z.number(),
  kind: z.string(),
});

export interface DecodedRecord {
  readonly record: LogRecord;
  readonly checksum: string;
  readonly previousChecksum: string;
}

/**
 * A line of the run log (without its line feed), or undefined when any byte of it is wrong. A whole
 * record that this version does not understand is kept as `unknown`.
 */
export function decodeRecord(line: string): DecodedRecord | undefined {
  const checksum = checksumOfLine(line);
  if (checksum === null) return undefined;
  const value = parseJson(line);
  const envelope = envelopeSchema.safeParse(value);
  if (!envelope.success) return undefined;
  const { seq, prev, monoS, wallMs, kind } = envelope.data;
  const body = parseBody(kind, value) ?? ({ kind: 'unknown' } as const);
  return { record: { stamp: { seq, monoS, wallMs }, body }, checksum, previousChecksum: prev };
}

const readingsBodySchema = z.object({ readings: z.array(packedReadingSchema).min(1) });

function parseBody(kind: string, value: unknown): LogBody | undefined {
  // Nearly every record holds readings; going straight to their schema keeps long logs quick to open.
  if (kind === 'readings') {
    const parsed = readingsBodySchema.safeParse(value);
    return parsed.success ? { kind, readings: parsed.data.readings } : undefined;
  }
  const { seq, prev, monoS, wallMs, crc, ...body } = value as Record<string, unknown>;
  const parsed = logBodySchema.safeParse(body);
  return parsed.success ? parsed.data : undefined;
}
