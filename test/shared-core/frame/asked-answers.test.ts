import { describe, expect, test } from 'vitest';
import { decodeRegisters, findModbusAnswer, parseScpiAnswer } from '#shared-core';
import { modbusChecksum } from '../../../shared-core/frame/modbus-answer.ts';
import { scpiQuestionSchema } from '../../../shared-core/frame/serial-source.ts';

const question = { unitId: 1, functionCode: 4, registerCount: 1 } as const;

function framed(...body: number[]): number[] {
  const crc = modbusChecksum(Uint8Array.from(body));
  return [...body, crc & 0xff, crc >> 8];
}

const answer = framed(1, 4, 2, 3, 0x10);

describe('a Modbus answer', () => {
  // MODBUS over Serial Line V1.02, 6.2.2: 02 07 has the checksum 1241 (hexadecimal).
  test('has the checksum of the standard', () => {
    expect(modbusChecksum(Uint8Array.of(2, 7))).toBe(0x1241);
  });

  test('is found wherever it lies among noise', () => {
    for (let noise = 0; noise < 20; noise += 1) {
      const bytes = Uint8Array.from([...new Array<number>(noise).fill(1), ...answer, 9, 9]);
      expect(findModbusAnswer(bytes, question)).toEqual({ start: noise, length: 7 });
    }
  });

  test('counts only with the right unit, function, length and checksum', () => {
    const others = [
      framed(2, 4, 2, 3, 0x10),
      framed(1, 3, 2, 3, 0x10),
      framed(1, 4, 4, 3, 0x10, 0, 0),
      [...answer.slice(0, -1), (answer.at(-1) ?? 0) ^ 1],
      answer.slice(0, -1),
    ];
    for (const bytes of others) {
      expect(findModbusAnswer(Uint8Array.from(bytes), question)).toBeNull();
    }
  });

  test('loses any single flipped bit', () => {
    for (let bit = 0; bit < 8 * answer.length; bit += 1) {
      const bytes = Uint8Array.from(answer);
      bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect(findModbusAnswer(bytes, question)).toBeNull();
    }
  });

  test.each([1, 2, 5])(
    'to a question for %d registers has as many, and is whole before it counts',
    (count) => {
      const asked = { unitId: 3, functionCode: 3, registerCount: count } as const;
      const frame = framed(3, 3, 2 * count, ...new Array<number>(2 * count).fill(0x55));
      for (let heard = 0; heard < frame.length; heard += 1)
        expect(findModbusAnswer(Uint8Array.from(frame.slice(0, heard)), asked)).toBeNull();
      expect(findModbusAnswer(Uint8Array.from(frame), asked)).toEqual({
        start: 0,
        length: 5 + 2 * count,
      });
      const other = framed(3, 3, 2 * count + 2, ...new Array<number>(2 * count).fill(0x55));
      expect(findModbusAnswer(Uint8Array.from(other), asked)).toBeNull();
    },
  );

  test('that is half heard does not count even where its first bytes check by themselves', () => {
    const asked = { unitId: 1, functionCode: 4, registerCount: 2 } as const;
    const half = framed(1, 4, 4, 0x12, 0x34);
    expect(findModbusAnswer(Uint8Array.from(half), asked)).toBeNull();
    const whole = framed(...half);
    expect(findModbusAnswer(Uint8Array.from(whole), asked)).toEqual({ start: 0, length: 9 });
  });

  test('may be a refusal', () => {
    expect(findModbusAnswer(Uint8Array.from(framed(1, 0x84, 2)), question)).toEqual({
      start: 0,
      length: 5,
    });
  });

  test('holds numbers of six kinds', () => {
    expect([
      decodeRegisters([0x8000], 'int16'),
      decodeRegisters([0x8000], 'uint16'),
      decodeRegisters([0xffff, 0xfffe], 'int32'),
      decodeRegisters([0xfffe, 0xffff], 'int32-swapped'),
      decodeRegisters([0x429c, 0x8000], 'float32'),
      decodeRegisters([0x8000, 0x429c], 'float32-swapped'),
      decodeRegisters([0x7fc0, 0], 'float32'),
      decodeRegisters([1], 'int32'),
      decodeRegisters([], 'int16'),
      decodeRegisters([7, 9], 'int16'),
    ]).toEqual([-32768, 32768, -2, -2, 78.25, 78.25, null, null, null, 7]);
  });
});

describe('a SCPI answer', () => {
  test.each([
    ['78.42', [78.42]],
    ['+7.84200000E+01', [78.42]],
    ['+7.842E+01,+9.13E+01', [78.42, 91.3]],
    ['9.91E37', [null]],
    ['-9.9E37', [null]],
    ['9.8E37', [null]],
    ['9.79E37', [9.79e37]],
    ['open', [null]],
    [' 78,91 ', [78, 91]],
  ])('%s is read', (line, values) => {
    const parsed = parseScpiAnswer(line);
    expect(parsed.ok && parsed.value.map(({ value }) => value)).toEqual(values);
  });

  test.each([
    ['-113,"Undefined header"', 'answer-error'],
    ['  0 , "No error"', 'answer-error'],
    ['Teaching lab,Thermometer,0,1.0', 'not-understood'],
    ['', 'not-understood'],
  ])('%j is not a reading: %s', (line, kind) => {
    const parsed = parseScpiAnswer(line);
    expect(parsed.ok ? null : parsed.error.kind).toBe(kind);
  });
});

test('a question to an instrument is one line and one question: nothing behind it can set anything', () => {
  const isQuestion = (text: string) => scpiQuestionSchema.safeParse(text).success;
  expect(['READ?', 'MEAS:TEMP? (@101)', '*IDN?'].map(isQuestion)).toEqual([true, true, true]);
  expect(
    ['READ?\n*RST', 'READ?\r\nVOLT 30', 'READ?;*RST', 'VOLT 30\nREAD?', 'READ?\n'].map(isQuestion),
  ).toEqual([false, false, false, false, false]);
});
