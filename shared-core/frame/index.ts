export { celsiusFrom } from './celsius-from.ts';
export { channelsForNames } from './channel-for-name.ts';
export { explainRejection } from './explain-rejection.ts';
export { countTextBytes, latin1Bytes, printable } from './latin-1.ts';
export {
  createLineReader,
  type LineOutcome,
  type LineReader,
  type LineReaderOptions,
} from './line-reader.ts';
export { createLineSplitter, type LineSplitter, longestLineBytes } from './line-splitter.ts';
export { type PlainTextOptions, parsePlainText } from './parse-plain-text.ts';
export { createPowerOnScreen, type PowerOnScreen } from './power-on-screen.ts';
export { type LineRejection, mostValuesInLine, type RawValue, type WireUnit } from './raw-value.ts';
export { type ChannelValue, toChannelValue, type ValueDoubt } from './to-channel-value.ts';
export { readUnit, readWireNumber, type WireNumber } from './wire-number.ts';
