/** What probes say: bytes, lines and answers, turned into channel values. */
export { decodeRegisters, registersIn } from './decode-registers.ts';
export { explainRejection } from './explain-rejection.ts';
export { countTextBytes, latin1Bytes, printable } from './latin-1.ts';
export {
  createLineReader,
  type LineOutcome,
} from './line-reader.ts';
export { createLineSplitter } from './line-splitter.ts';
export { meaningOf } from './meaning-of.ts';
export { findModbusAnswer, modbusChecksum } from './modbus-answer.ts';
export { modbusQuestionBytes } from './modbus-question.ts';
export { compilePattern } from './own-pattern.ts';
export { parseScpiAnswer } from './parse-scpi-answer.ts';
export { createPowerOnScreen, type PowerOnScreen, powerOnC } from './power-on-screen.ts';
export { previewPattern } from './preview-pattern.ts';
export type { WireUnit } from './raw-value.ts';
export {
  askEveryRangeS,
  baudRates,
  modbusSettingsSchema,
  type SerialSource,
  serialSourceSchema,
} from './serial-source.ts';
export { toChannelValue } from './to-channel-value.ts';
export { readUnit, readWireNumber } from './wire-number.ts';
