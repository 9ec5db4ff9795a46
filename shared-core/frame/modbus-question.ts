import { type ModbusQuestion, modbusChecksum } from './modbus-answer.ts';

/**
 * The eight bytes that ask for registers: unit, function, first register, how many, CRC-16 with its low byte first.
 *
 * @param question which unit, function (3 or 4), how many registers
 * @param address first register, 0 … 65535
 *
 * Source: MODBUS Application Protocol Specification V1.1b3, 6.3 and 6.4; MODBUS over Serial Line V1.02, 2.5.1.
 *
 * @example
 * [...modbusQuestionBytes({ unitId: 1, functionCode: 4, registerCount: 1 }, 0)] // => [1, 4, 0, 0, 0, 1, 49, 202]
 */
export function modbusQuestionBytes(question: ModbusQuestion, address: number): Uint8Array {
  const { unitId, functionCode, registerCount } = question;
  const words = [address, registerCount].flatMap((word) => [word >> 8, word & 0xff]);
  const body = Uint8Array.of(unitId, functionCode, ...words);
  const checksum = modbusChecksum(body);
  return Uint8Array.of(...body, checksum & 0xff, checksum >> 8);
}
