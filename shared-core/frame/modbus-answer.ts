/** A question as it was sent: which unit, which function (3 or 4), how many registers. */
export interface ModbusQuestion {
  readonly unitId: number;
  readonly functionCode: 3 | 4;
  readonly registerCount: number;
}

/** Where the answer to a question lies in the bytes heard since it was asked. */
export interface ModbusAnswerPlace {
  readonly start: number;
  readonly length: number;
}

const exceptionLength = 5;

/**
 * Finds the first undamaged answer (or refusal) to a question among the bytes heard, wherever noise
 * or an old answer went before it; null while there is none. A frame counts only with the right unit,
 * function, length and checksum.
 *
 * Source: MODBUS over Serial Line, Specification and Implementation Guide V1.02, 2.5.1 (RTU framing,
 * CRC); MODBUS Application Protocol Specification V1.1b3, 6.3 and 6.4.
 *
 * @example
 * const question = { unitId: 1, functionCode: 4, registerCount: 1 };
 * findModbusAnswer(Uint8Array.of(0xff, 1, 4, 2, 0x03, 0x0f, 0xf9, 0xc4), question).start // => 1
 */
export function findModbusAnswer(
  bytes: Uint8Array,
  question: ModbusQuestion,
): ModbusAnswerPlace | null {
  const wanted = 3 + 2 * question.registerCount + 2;
  for (let start = 0; start + exceptionLength <= bytes.length; start += 1) {
    if (bytes[start] !== question.unitId) continue;
    const isRefusal = bytes[start + 1] === (question.functionCode | 0x80);
    const isAnswer =
      bytes[start + 1] === question.functionCode && bytes[start + 2] === 2 * question.registerCount;
    const length = isRefusal ? exceptionLength : isAnswer ? wanted : 0;
    if (length === 0 || start + length > bytes.length) continue;
    if (modbusChecksum(bytes.subarray(start, start + length)) === 0) return { start, length };
  }
  return null;
}

/**
 * CRC-16 of the RTU framing: reflected polynomial 0xA001, start 0xFFFF. Over a frame that ends in its
 * own checksum it is 0.
 *
 * Source: MODBUS over Serial Line, Specification and Implementation Guide V1.02, 6.2.2.
 *
 * @example
 * modbusChecksum(Uint8Array.of(0x02, 0x07)) // => 4673
 */
export function modbusChecksum(bytes: Uint8Array): number {
  let crc = 0xffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) {
      crc = crc & 1 ? (crc >>> 1) ^ 0xa001 : crc >>> 1;
    }
  }
  return crc;
}
