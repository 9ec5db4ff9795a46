import { z } from 'zod';
import { parseJson } from '../result/index.ts';
import { checksumLength, checksumOfLine } from './checked-line.ts';
import { type LogBody, type LogRecord, logBodySchema } from './log-record.ts';
import { isPackedReading, type PackedReading } from './packed-reading.ts';

interface Envelope {
  readonly seq: number;
  readonly prev: string;
  readonly monoS: number;
  readonly wallMs: number;
  readonly kind: string;
}

/**
 * One test each for what stands around a record and for a record of readings, as for a row of them: nearly every line of a long log goes
 * through both, and a schema of objects takes longer for them than reading the text.
 */
const envelopeSchema = z.custom<Envelope>((value) => {
  const { seq, prev, monoS, wallMs, kind } = fieldsOf<Envelope>(value);
  return (
    Number.isSafeInteger(seq) &&
    (seq as number) >= 0 &&
    typeof prev === 'string' &&
    prev.length === checksumLength &&
    Number.isFinite(monoS) &&
    Number.isFinite(wallMs) &&
    typeof kind === 'string'
  );
});

interface ReadingsBody {
  readonly readings: PackedReading[];
}

const readingsBodySchema = z.custom<ReadingsBody>((value) => {
  const { readings } = fieldsOf<ReadingsBody>(value);
  return Array.isArray(readings) && readings.length > 0 && readings.every(isPackedReading);
});

function fieldsOf<T>(value: unknown): { readonly [K in keyof T]?: unknown } {
  return typeof value === 'object' && value !== null ? value : {};
}

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
