import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { potOffset, potReading } from '../../../shared-core/twin/pot-reading.ts';

describe('what a head that is off tells of the pot', () => {
  test('by hand: pressure 0.3 K and all else 0.4 K make 0.5 K, of which 0.36 is expected of the pot and 0.24 K stay open', () => {
    expect(potOffset({ offsetSdK: 0.5, pressureSdK: 0.3 })).toEqual({
      offsetShare: expect.closeTo(0.36, 12),
      openSdK: expect.closeTo(0.24, 12),
    });
  });

  test('nothing where the pressure is known, all where nothing else is in doubt', () => {
    expect(potOffset({ offsetSdK: 0.5, pressureSdK: 0 })).toEqual({ offsetShare: 0, openSdK: 0 });
    expect(potOffset({ offsetSdK: 2, pressureSdK: 2 })).toEqual({ offsetShare: 1, openSdK: 0 });
  });

  test('as the regression of the one on the other has it, over many benches', () => {
    const random = createRandom('benches');
    const { offsetShare, openSdK } = potOffset({ offsetSdK: Math.hypot(2, 0.7), pressureSdK: 2 });
    let [products, squares, rests] = [0, 0, 0];
    for (let bench = 0; bench < 20_000; bench += 1) {
      const pressureK = 2 * random.normal();
      const headK = pressureK + 0.7 * random.normal();
      products += pressureK * headK;
      squares += headK ** 2;
      rests += (pressureK - offsetShare * headK) ** 2;
    }
    expect(products / squares).toBeCloseTo(offsetShare, 2);
    expect(Math.sqrt(rests / 20_000)).toBeCloseTo(openSdK, 2);
  });
});

test('a reading of the pot is doubted by its own 0.4 K and by what stays open of the pressure', () => {
  expect(potReading(600, 14.2, { offsetSdK: 0.5, pressureSdK: 0.3 })).toEqual({
    kind: 'pot',
    boiledS: 600,
    value: 14.2,
    sd: expect.closeTo(Math.hypot(0.4, 0.24), 12),
    offsetShare: expect.closeTo(0.36, 12),
  });
});
