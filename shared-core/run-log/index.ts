/** The record of a run, encoded and read back. */
export { checkedLine, checksumOfLine } from './checked-line.ts';
export { encodeRecord, firstPreviousChecksum } from './encode-record.ts';
export { inputsOfRecord } from './inputs-of-record.ts';
export {
  type LogBody,
  type LogHeader,
  type LogRecord,
  logHeaderSchema,
  runLogVersion,
} from './log-record.ts';
export { createLogScanner, type DamagedStretch, type ScannedItem } from './log-scanner.ts';
export { packReading, unpackReading } from './packed-reading.ts';
