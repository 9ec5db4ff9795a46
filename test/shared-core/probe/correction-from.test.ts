import { describe, expect, test } from 'vitest';
import {
  correctionAtPlateauK,
  correctionFrom,
} from '../../../shared-core/probe/correction-from.ts';

const settled = (readingC: number) => ({ readingC, standardUncertaintyK: 0.03, driftKPerMin: 0 });
const pressure = { pressureKPa: 100, standardUncertaintyKPa: 0.2 };
const ice = settled(0.4);
const steam = settled(98.5);
// IAPWS R7-97, table 36: water boils at 372.755 918 611 K under 0.1 MPa.
const boilsC = 372.755_918_611 - 273.15;
/** Of a point in crushed ice of tap water, ± 0.1 K, and of the reading. */
const iceK2 = 0.1 ** 2 / 3 + 0.03 ** 2;
/** Of steam at 0.277 K/kPa, of the flask's neck, ± 0.05 K, and of the reading. */
const steamK2 = (0.277 * 0.2) ** 2 + 0.05 ** 2 / 3 + 0.03 ** 2;

describe('the correction of a probe from its baths', () => {
  test('is none where it was held in neither', () => {
    expect(correctionFrom({ ice: null, steam: null }, pressure)).toBeNull();
  });

  test('moves every reading alike where it was held in one, its gain in doubt by ± 0.5 %', () => {
    const doubtAt78 = (pointK2: number, fromPointK: number) =>
      Math.sqrt(pointK2 + (0.005 * fromPointK) ** 2 / 3);
    expect([
      correctionFrom({ ice, steam: null }, pressure),
      correctionFrom({ ice: null, steam }, pressure),
    ]).toEqual([
      {
        ok: true,
        value: {
          offsetK: -0.4,
          gain: 1,
          standardUncertaintyK: expect.closeTo(doubtAt78(iceK2, 77.6), 9),
        },
      },
      {
        ok: true,
        value: {
          offsetK: expect.closeTo(boilsC - 98.5, 2),
          gain: 1,
          standardUncertaintyK: expect.closeTo(doubtAt78(steamK2, 20.5), 3),
        },
      },
    ]);
  });

  test('is a line through both, whose doubt at the plateau is shared between them', () => {
    const gain = boilsC / 98.1;
    // The plateau lies (78 − 0.4)/98.1 of the way from ice to steam.
    const way = 77.6 / 98.1;
    expect(correctionFrom({ ice, steam }, pressure)).toEqual({
      ok: true,
      value: {
        offsetK: expect.closeTo(-0.4 * gain, 3),
        gain: expect.closeTo(gain, 4),
        standardUncertaintyK: expect.closeTo(
          Math.sqrt((1 - way) ** 2 * iceK2 + way ** 2 * steamK2),
          3,
        ),
      },
    });
  });

  test('is refused with the numbers that show why', () => {
    expect([
      correctionFrom({ ice: steam, steam: ice }, pressure),
      correctionFrom({ ice: settled(7), steam: null }, pressure),
    ]).toEqual([
      { ok: false, error: { kind: 'points-swapped' } },
      {
        ok: false,
        error: { kind: 'correction-too-large', referenceC: 0, correctionK: -7, limitK: 5 },
      },
    ]);
  });

  test('at the plateau is the offset and what the gain does to 78 °C', () => {
    const at = (offsetK: number, gain: number) =>
      correctionAtPlateauK({ offsetK, gain, standardUncertaintyK: 0.1 });
    expect([at(0.4, 1), at(0.4, 1.01), at(-0.4, 0.99)]).toEqual([
      0.4,
      expect.closeTo(1.18, 9),
      expect.closeTo(-1.18, 9),
    ]);
  });
});
