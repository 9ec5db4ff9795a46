import { describe, expect, test } from 'vitest';
import { correctionAtPlateauK, correctionFrom } from '#shared-core';
import {
  type CalibrationState,
  calibrationAfter,
  nothingTaken,
} from '../../../renderer/calibrate/calibration-state.ts';

const pressure = { pressureKPa: 101.325, standardUncertaintyKPa: 0.1 };

function bath(state: CalibrationState, temperatureC: number, fromS: number): CalibrationState {
  return Array.from({ length: 50 }, (_, second) => fromS + second).reduce(
    (known, timeS) =>
      calibrationAfter(known, {
        type: 'heard',
        reading: { timeS, temperatureC: temperatureC + 0.02 * (timeS % 2) },
      }),
    state,
  );
}

const taken = (state: CalibrationState, point: 'ice' | 'steam') =>
  calibrationAfter(state, { type: 'taken', point });

describe('the walk through ice and steam', () => {
  test('a probe that reads 0.4 K high in both baths is corrected by −0.4 K at the plateau', () => {
    // Steam at 101.325 kPa is 99.974 °C on ITS-90 (IAPWS), from memory.
    const ice = taken(bath(nothingTaken, 0.4, 0), 'ice');
    const both = taken(bath(ice, 100.37, 300), 'steam');
    const correction = correctionFrom(both, pressure);
    expect(correction?.ok).toBe(true);
    if (!correction?.ok) return;
    expect(correctionAtPlateauK(correction.value)).toBeCloseTo(-0.41, 1);
    expect(correction.value.standardUncertaintyK).toBeLessThan(0.1);
  });

  test('a bath that still drifts cannot be taken', () => {
    const drifting = Array.from({ length: 50 }, (_, timeS) => timeS).reduce(
      (known, timeS) =>
        calibrationAfter(known, {
          type: 'heard',
          reading: { timeS, temperatureC: 20 - 0.1 * timeS },
        }),
      nothingTaken,
    );
    expect(taken(drifting, 'ice').ice).toBeNull();
  });

  test('swapped baths give a problem, not a correction', () => {
    const swapped = taken(bath(taken(bath(nothingTaken, 100, 0), 'ice'), 0, 300), 'steam');
    expect(correctionFrom(swapped, pressure)).toMatchObject({
      ok: false,
      error: { kind: 'points-swapped' },
    });
  });

  test('a reading heard twice counts once; a probe plugged in anew starts anew', () => {
    const once = bath(nothingTaken, 0.4, 0);
    const last = once.lately.at(-1)!;
    const again = calibrationAfter(once, { type: 'heard', reading: last });
    const anew = calibrationAfter(once, { type: 'heard', reading: { ...last, timeS: 1 } });
    expect([again.lately.length, anew.lately.length]).toEqual([once.lately.length, 1]);
  });

  test('nothing taken is no correction', () => {
    expect(correctionFrom(nothingTaken, pressure)).toBeNull();
  });
});
