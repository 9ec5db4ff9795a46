import { z } from 'zod';
import { columnMappingSchema } from '../csv/index.ts';
import { fermentIdSchema } from '../ferment-log/index.ts';
import { runSettingsSchema } from '../run/index.ts';
import { wordingSchema } from '../wording/index.ts';
import { contractLimits } from './contract-limits.ts';
import { lateMarkSchema } from './late-mark.ts';

const runId = z.string().min(1).max(120);
const ticket = z.string().min(1).max(60);

const base64Piece = z.string().max(Math.ceil(contractLimits.pieceBytes / 3) * 4 + 4);

/** Encodings a person may say a file is in; `auto` finds out. All are names of the Encoding Standard. */
export const textEncodingSchema = z.enum([
  'auto',
  'utf-8',
  'utf-16le',
  'utf-16be',
  'windows-1252',
  'iso-8859-15',
  'windows-1250',
  'windows-1251',
  'macintosh',
  'gb18030',
  'shift_jis',
]);

/** Requests about files that come in and go out, in pieces, so that neither end holds a message of any size. */
export const exchangeRequests = {
  /** A measurement made after the run, or the withdrawal of one; the run's log stays as it was. */
  'runs/book': {
    commands: true,
    body: z.strictObject({ runId, mark: lateMarkSchema }),
    answer: z.strictObject({ markId: z.number().int() }),
  },
  'imports/begin': {
    commands: true,
    body: z.strictObject({ bytes: z.number().int().min(1).max(contractLimits.importBytes) }),
    answer: z.strictObject({ importId: ticket }),
  },
  /** The next piece; the file is whole once as many bytes have come as were announced. */
  'imports/add': {
    commands: true,
    body: z.strictObject({ importId: ticket, base64: base64Piece }),
    answer: z.strictObject({ receivedBytes: z.number().int() }),
  },
  /** Makes the run. Also lets go of the file when it can't be used. */
  'imports/finish': {
    commands: true,
    body: z.strictObject({
      importId: ticket,
      encoding: textEncodingSchema,
      /** Null finds the columns by their titles. */
      mapping: columnMappingSchema.nullable(),
      settings: runSettingsSchema,
      /** When the run began, as the person says; null leaves it to the file's own dates. */
      startedAtIso: z.iso.datetime().nullable().default(null),
    }),
    answer: z.strictObject({
      runId,
      remarks: z.array(z.string()),
      rejectedRows: z.array(z.string()),
      /** What these sentences were made from, for a window in another language. */
      wording: wordingSchema.optional(),
    }),
  },
  'imports/cancel': {
    commands: true,
    body: z.strictObject({ importId: ticket }),
    answer: z.strictObject({}),
  },
  /** Makes the export pack of some runs; the event `pack` tells how far it is. */
  'packs/make': {
    commands: false,
    body: z.strictObject({
      packId: ticket,
      runIds: z.array(runId).min(1).max(contractLimits.runsInPack),
    }),
    answer: z.strictObject({ fileName: z.string(), bytes: z.number().int() }),
  },
  /** The same of the weeks of some ferments. */
  'packs/make-ferments': {
    commands: false,
    body: z.strictObject({
      packId: ticket,
      fermentIds: z.array(fermentIdSchema).min(1).max(contractLimits.runsInPack),
    }),
    answer: z.strictObject({ fileName: z.string(), bytes: z.number().int() }),
  },
  /** The files of a run as they are, in one ZIP file that is fetched and dropped like a pack: for a run that can't be opened. */
  'packs/make-files': {
    commands: false,
    body: z.strictObject({ packId: ticket, runId }),
    answer: z.strictObject({ fileName: z.string(), bytes: z.number().int() }),
  },
  /** A run as one table, fetched and dropped like a pack: a day of readings is more than a message holds. */
  'packs/make-table': {
    commands: false,
    body: z.strictObject({ packId: ticket, runId, format: z.enum(['csv', 'csv-semicolon']) }),
    answer: z.strictObject({
      fileName: z.string(),
      bytes: z.number().int(),
      /** What the table lacks and why, in a sentence; absent where it lacks nothing. */
      missing: z.string().optional(),
      wording: wordingSchema.optional(),
    }),
  },
  'packs/read': {
    commands: false,
    body: z.strictObject({ packId: ticket, fromByte: z.number().int().min(0) }),
    answer: z.strictObject({ base64: z.string(), nextByte: z.number().int().nullable() }),
  },
  /** The window has it, or does not want it any more. */
  'packs/drop': {
    commands: false,
    body: z.strictObject({ packId: ticket }),
    answer: z.strictObject({}),
  },
} as const;

/** How far the making of a pack is; the id is the one that the window gave it. */
export const packProgressSchema = z.strictObject({
  packId: z.string(),
  /** The file or run being worked on. */
  doing: z.string(),
  done: z.number().int(),
  total: z.number().int(),
});
