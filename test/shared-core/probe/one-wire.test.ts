import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type OneWireBits,
  OutOfRangeError,
  oneWireCrc8,
  oneWireRaw,
  oneWireTemperatureC,
  readScratchpad,
} from '#shared-core';
import dataSheet from '../../reference/probe_digital_one_wire.json' with { type: 'json' };

function scratchpad(raw: number, configuration = 0x7f): number[] {
  const bytes = [raw & 0xff, raw >> 8, 0x4b, 0x46, configuration, 0xff, 0x0c, 0x10];
  return [...bytes, oneWireCrc8(bytes)];
}

describe('register', () => {
  test.each(Object.entries(dataSheet.data_sheet_examples))('%s °C is %s', (celsius, hex) => {
    // Source: DS18B20 data sheet, data relationship table.
    const raw = Number.parseInt(hex, 16);
    expect([oneWireTemperatureC(raw), oneWireRaw(Number(celsius))]).toEqual([Number(celsius), raw]);
  });

  test('every register value within range survives the round trip', () => {
    for (let sixteenths = -55 * 16; sixteenths <= 125 * 16; sixteenths += 1) {
      const raw = sixteenths & 0xffff;
      expect(oneWireRaw(oneWireTemperatureC(raw))).toBe(raw);
    }
  });

  test('at lower resolution the undefined bits do not count', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -55 * 2, max: 125 * 2 - 1 }),
        fc.integer({ min: 0, max: 7 }),
        (halves, noise) => {
          expect(oneWireTemperatureC(((halves * 8) & 0xffff) | noise, 9)).toBe(halves / 2);
        },
      ),
    );
  });

  test.each([0x07d1, 0xfc8f, 0x8000, -1, 65_536, 1.5, Number.NaN])('%d is refused', (raw) => {
    expect(() => oneWireTemperatureC(raw)).toThrow(OutOfRangeError);
  });

  test.each([-55.1, 125.1, Number.NaN])('%d °C has no register', (temperatureC) => {
    expect(() => oneWireRaw(temperatureC)).toThrow(OutOfRangeError);
  });
});

describe('oneWireCrc8', () => {
  test('a record with its checksum appended gives zero, and one flipped bit never does', () => {
    const record = fc.array(fc.integer({ min: 0, max: 255 }), { minLength: 1, maxLength: 16 });
    fc.assert(
      fc.property(record, fc.nat(), (bytes, flip) => {
        const sent = [...bytes, oneWireCrc8(bytes)];
        expect(oneWireCrc8(sent)).toBe(0);
        const at = flip % (sent.length * 8);
        const damaged = sent.map((byte, index) =>
          index === at >> 3 ? byte ^ (1 << (at & 7)) : byte,
        );
        expect(oneWireCrc8(damaged)).not.toBe(0);
      }),
    );
  });
});

describe('readScratchpad', () => {
  test('reads temperature and resolution', () => {
    expect(readScratchpad(scratchpad(0x04e2, 0x1f))).toEqual({
      ok: true,
      value: { temperatureC: 78, bits: 9, maybePowerOnValue: false },
    });
    const configurations: readonly (readonly [number, OneWireBits])[] = [
      [0x3f, 10],
      [0x5f, 11],
      [0x7f, 12],
    ];
    for (const [configuration, bits] of configurations) {
      expect(readScratchpad(Uint8Array.from(scratchpad(0x0191, configuration)))).toMatchObject({
        ok: true,
        value: { bits },
      });
    }
  });

  test('85 °C is marked as perhaps only the power-on value', () => {
    expect(readScratchpad(scratchpad(0x0550))).toMatchObject({
      ok: true,
      value: { temperatureC: 85, maybePowerOnValue: true },
    });
  });

  const good = scratchpad(0x0191);
  test.each([
    ['a torn record', good.slice(0, 8), { kind: 'wrong-length', bytes: 8 }],
    ['a bus without a sensor', new Array(9).fill(0xff), { kind: 'no-sensor' }],
    ['a shorted bus, though its checksum is right', new Array(9).fill(0), { kind: 'bus-shorted' }],
    [
      'a damaged byte',
      good.with(0, 0x90),
      { kind: 'checksum', expected: oneWireCrc8(good.with(0, 0x90).slice(0, 8)), found: good[8] },
    ],
    ['an impossible register', scratchpad(0x4000), { kind: 'not-a-temperature', raw: 0x4000 }],
  ])('refuses %s', (_, bytes, error) => {
    expect(readScratchpad(bytes)).toEqual({ ok: false, error });
  });
});
