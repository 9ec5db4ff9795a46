export { celsiusFrom } from './celsius-from.ts';
export { channelsForNames } from './channel-for-name.ts';
export { decodeRegisters, type RegisterType, registersIn } from './decode-registers.ts';
export { explainRejection } from './explain-rejection.ts';
export { countTextBytes, latin1Bytes, printable } from './latin-1.ts';
export {
  createLineReader,
  type LineOutcome,
  type LineReader,
  type LineReaderOptions,
} from './line-reader.ts';
export { createLineSplitter, type LineSplitter, longestLineBytes } from './line-splitter.ts';
export { type MeaningOptions, meaningOf } from './meaning-of.ts';
export {
  findModbusAnswer,
  type ModbusAnswerPlace,
  type ModbusQuestion,
  modbusChecksum,
} from './modbus-answer.ts';
export {
  compilePattern,
  matchPattern,
  type OwnPattern,
  type PatternProblem,
} from './own-pattern.ts';
export { parseJsonLine } from './parse-json-line.ts';
export { type PlainTextOptions, parsePlainText } from './parse-plain-text.ts';
export { parseScpiAnswer } from './parse-scpi-answer.ts';
export { createPowerOnScreen, type PowerOnScreen } from './power-on-screen.ts';
export { type PatternPreview, previewPattern } from './preview-pattern.ts';
export { type LineRejection, mostValuesInLine, type RawValue, type WireUnit } from './raw-value.ts';
export { type ChannelValue, toChannelValue, type ValueDoubt } from './to-channel-value.ts';
export { readUnit, readWireNumber, type WireNumber } from './wire-number.ts';
