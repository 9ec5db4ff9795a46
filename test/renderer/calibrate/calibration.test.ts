import { describe, expect, test } from 'vitest';
import { correctionAtPlateauK, correctionFrom } from '#shared-core';
import {
  type CalibrationState,
  calibrationAfter,
  nothingTaken,
} from '../../../renderer/calibrate/calibration-state.ts';
import { settlingOf, withReading } from '../../../renderer/calibrate/settling.ts';

const pressure = { pressureKPa: 101.325, standardUncertaintyKPa: 0.1 };

type Heard = Parameters<typeof settlingOf>[0];

function bath(temperatureC: number, fromS: number, lately: Heard = []): Heard {
  return Array.from({ length: 50 }, (_, second) => fromS + second).reduce<Heard>(
    (known, timeS) =>
      withReading(known, { timeS, temperatureC: temperatureC + 0.02 * (timeS % 2) }),
    lately,
  );
}

function taken(
  state: CalibrationState,
  point: 'ice' | 'steam',
  lately: Heard,
  device: string | null = null,
): CalibrationState {
  const settled = settlingOf(lately);
  if (!settled.ok) throw new Error(settled.error.kind);
  return calibrationAfter(state, { type: 'taken', point, settled: settled.value, device });
}

describe('the walk through ice and steam', () => {
  test('what a probe said before it was let go is not taken for the bath', () => {
    expect([settlingOf(bath(0.4, 0)).ok, settlingOf(bath(0.4, 0), false)]).toEqual([
      true,
      { ok: false, error: { kind: 'not-heard' } },
    ]);
  });

  test('a probe that reads 0.4 K high in both baths is corrected by −0.4 K at the plateau', () => {
    // Steam at 101.325 kPa is 99.974 °C on ITS-90 (IAPWS), from memory.
    const iceBath = bath(0.4, 0);
    const ice = taken(nothingTaken, 'ice', iceBath);
    const both = taken(ice, 'steam', bath(100.37, 300, iceBath));
    const correction = correctionFrom(both, pressure);
    expect(correction?.ok).toBe(true);
    if (!correction?.ok) return;
    expect(correctionAtPlateauK(correction.value)).toBeCloseTo(-0.41, 1);
    expect(correction.value.standardUncertaintyK).toBeLessThan(0.1);
  });

  test('a point of another probe begins the walk anew', () => {
    const iceBath = bath(0.4, 0);
    const ice = taken(nothingTaken, 'ice', iceBath, 'one');
    const steam = bath(100.37, 300, iceBath);
    expect(taken(ice, 'steam', steam, 'one')).toMatchObject({ ice: ice.ice, device: 'one' });
    expect(taken(ice, 'steam', steam, 'two')).toMatchObject({ ice: null, device: 'two' });
  });

  test('a bath that still drifts has not settled', () => {
    const drifting = Array.from({ length: 50 }, (_, timeS) => timeS).reduce<Heard>(
      (known, timeS) => withReading(known, { timeS, temperatureC: 20 - 0.1 * timeS }),
      [],
    );
    expect(settlingOf(drifting)).toMatchObject({ ok: false, error: { kind: 'still-drifting' } });
  });

  test('swapped baths give a problem, not a correction', () => {
    const ice = taken(nothingTaken, 'ice', bath(100, 0));
    const swapped = taken(ice, 'steam', bath(0, 300));
    expect(correctionFrom(swapped, pressure)).toMatchObject({
      ok: false,
      error: { kind: 'points-swapped' },
    });
  });

  test('a reading heard twice counts once; a probe plugged in anew starts anew', () => {
    const once = bath(0.4, 0);
    const last = once.at(-1)!;
    const again = withReading(once, last);
    const anew = withReading(once, { ...last, timeS: 1 });
    expect([again.length, anew.length]).toEqual([once.length, 1]);
  });

  test('nothing taken is no correction', () => {
    expect(correctionFrom(nothingTaken, pressure)).toBeNull();
  });
});
