export { crc32c } from './crc-32c.ts';
export { type DecodedRecord, decodeRecord } from './decode-record.ts';
export { type EncodedRecord, encodeRecord, firstPreviousChecksum } from './encode-record.ts';
export { inputsOfRecord } from './inputs-of-record.ts';
export {
  type LogBody,
  type LoggedChange,
  type LogHeader,
  type LogRecord,
  type LogStamp,
  logBodySchema,
  logHeaderSchema,
  runLogVersion,
} from './log-record.ts';
export {
  createLogScanner,
  type DamagedStretch,
  type LogScanner,
  longestRecordBytes,
  type ScannedItem,
} from './log-scanner.ts';
export { type PackedReading, packReading, unpackReading } from './packed-reading.ts';
