import fc from 'fast-check';
import { expect, test } from 'vitest';
import { modbusQuestionBytes, registersIn } from '#shared-core';
import { modbusChecksum } from '../../../shared-core/frame/modbus-answer.ts';

// MODBUS Application Protocol Specification V1.1b3, 6.3: "request to read registers 108 – 110" is 03 00 6B 00 03.
test('asks for the registers 108 to 110 as the standard writes it', () => {
  const asked = modbusQuestionBytes({ unitId: 0x11, functionCode: 3, registerCount: 3 }, 0x6b);
  expect([...asked.subarray(0, 6)]).toEqual([0x11, 0x03, 0x00, 0x6b, 0x00, 0x03]);
});

test('every question is eight bytes that say unit, function, register and count back, and check to nothing', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 247 }),
      fc.constantFrom(3 as const, 4 as const),
      fc.integer({ min: 1, max: 125 }),
      fc.integer({ min: 0, max: 65_535 }),
      (unitId, functionCode, registerCount, address) => {
        const asked = modbusQuestionBytes({ unitId, functionCode, registerCount }, address);
        const view = new DataView(asked.buffer);
        expect([
          asked.length,
          view.getUint8(0),
          view.getUint8(1),
          view.getUint16(2),
          view.getUint16(4),
          modbusChecksum(asked),
        ]).toEqual([8, unitId, functionCode, address, registerCount, 0]);
      },
    ),
  );
});

test('a number of 16 bits takes one register, one of 32 bits takes two', () => {
  const types = [
    'int16',
    'uint16',
    'int32',
    'int32-swapped',
    'float32',
    'float32-swapped',
  ] as const;
  expect(types.map(registersIn)).toEqual([1, 1, 2, 2, 2, 2]);
});
