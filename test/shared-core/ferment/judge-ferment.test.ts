import { describe, expect, test } from 'vitest';
import { judgeFerment } from '../../../shared-core/ferment/judge-ferment.ts';
import { referenceTable } from '../../reference-table.ts';
import { readingAt } from './support/at-hour.ts';

const gravities = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([timeH, gravity]) => readingAt(timeH, { gravity }));
const litre = { volumeMl: 1000, sugarG: null };

describe('judgeFerment', () => {
  test('says "finished" only when steady and near the expected end', () => {
    const week = gravities([0, 1.06], [20, 1.05], [44, 1.02], [68, 1.002], [92, 0.997]);
    expect(judgeFerment(week, litre).state).toBe('working');
    const longer = [...week, ...gravities([116, 0.996], [140, 0.996], [164, 0.996])];
    const verdict = judgeFerment(longer, litre);
    expect(verdict.state).toBe('finished');
    // 131.25 times the gravity lost is 8.4 % vol.
    expect(verdict.strengthAbv?.low).toBeLessThan(8.4);
    expect(verdict.strengthAbv?.high).toBeGreaterThan(8.4);
  });

  test('calls a ferment that stood for nine days at 1.058 stuck, never finished, and sees it go on', () => {
    const log = referenceTable('honey_ferment_stood_still.csv').map((row) =>
      readingAt(row.time_h ?? 0, { gravity: row.gravity ?? null }),
    );
    const standing = judgeFerment(
      log.filter(({ timeH }) => timeH <= 432),
      litre,
    );
    expect(standing).toMatchObject({ state: 'stuck', finishH: null });
    expect(standing.because).toContain('stuck?');
    const later = judgeFerment(log, litre);
    expect(later.state).not.toBe('finished');
    expect(later.strengthAbv?.high).toBeGreaterThan(8.9);
  });

  test('does not believe a first gravity that was read before the liquid was mixed', () => {
    const log = gravities([0, 1.06], [24, 1.08], [48, 1.071], [72, 1.05], [96, 1.03], [120, 1.015]);
    const verdict = judgeFerment(log, litre);
    expect(verdict.problems.join()).toContain('The first gravity, 1.060');
    // 131.25 times 0.065 is 8.5 % vol; from 1.060 it would be 5.9.
    expect(verdict.strengthAbv?.low).toBeGreaterThan(7.5);
  });

  test('calls steady but high stuck however long it stands', () => {
    const stood = gravities([0, 1.08], [24, 1.06], [48, 1.035]);
    for (let day = 3; day < 12; day += 1) {
      stood.push(readingAt(24 * day, { gravity: 1.03 }));
      if (day > 4) expect(judgeFerment(stood, litre).state).toBe('stuck');
    }
  });

  test('two published gas curves hold their strength and are not finished at 95 %', () => {
    for (const curve of referenceTable('carbon_dioxide_curves.csv')) {
      const gas = curve.gas_g_per_l ?? 0;
      const at = (timeH: number | undefined, share: number) =>
        // A balance reads what has left: the vapours too, and not the gas that is still dissolved.
        readingAt(timeH ?? 0, { massG: 1500 - Math.max(0, share * gas - 1.8) * 1.02 });
      const to98 = [
        at(0, 0),
        at(curve.most_at_h, 0.17),
        at(curve.h_95, 0.95),
        at(curve.h_98, 0.98),
      ];
      const verdict = judgeFerment([...to98, at(curve.last_h, 1)], litre);
      expect(verdict.strengthAbv?.low).toBeLessThan(curve.abv ?? 0);
      expect(verdict.strengthAbv?.high).toBeGreaterThan(curve.abv ?? 0);
      expect(judgeFerment(to98.slice(0, 3), litre).state).not.toBe('finished');
    }
  });

  test('a probe that hangs in it from the first hour takes nothing from the first gravity', () => {
    // At 20 °C warmth changes no speed, so that only what is known of the beginning can differ.
    const week = [
      ...gravities([5, 1.06], [20, 1.05], [44, 1.02], [68, 1.002], [92, 0.997]),
      ...gravities([116, 0.996], [140, 0.996], [164, 0.996]),
    ];
    const hourly = Array.from({ length: 165 }, (_, hour) => readingAt(hour, { temperatureC: 20 }));
    const watched = [...hourly, ...week].sort((a, b) => a.timeH - b.timeH);
    const [alone, both] = [judgeFerment(week, litre), judgeFerment(watched, litre)];
    expect(both.state).toBe(alone.state);
    const off = (both.originalGravity?.value ?? 0) - (alone.originalGravity?.value ?? 0);
    expect(Math.abs(off)).toBeLessThan(0.002);
    expect(Math.abs((both.strengthAbv?.value ?? 0) - (alone.strengthAbv?.value ?? 0))).toBeLessThan(
      0.2,
    );
  });

  test('a misread gravity is doubted in words and moves nothing', () => {
    const log = gravities([0, 1.06], [20, 1.05], [44, 1.02], [68, 1.07], [92, 1.0], [116, 0.998]);
    const verdict = judgeFerment(log, litre);
    expect(verdict.problems.join()).toContain('The gravity 1.070 after 68 h');
    expect(Math.abs((verdict.strengthAbv?.value ?? 0) - 8.2)).toBeLessThan(0.6);
  });

  test('a leaking lock that shows no bubbles does not make it stuck', () => {
    const log = gravities([0, 1.06], [20, 1.05], [44, 1.03], [68, 1.012]).map((one) => ({
      ...one,
      bubblesPerMin: 0,
    }));
    expect(judgeFerment(log, litre).state).toBe('working');
  });

  test('masses read twice a day tell the strength, and the end only where the sugar is known', () => {
    // 76 g of gas from 1 L, half of it after 50 h: some 10 % vol, which 170 g of sugar give.
    const weighed = Array.from({ length: 17 }, (_, index) =>
      readingAt(12 * index, {
        massG: Math.round(10 * (1600 - 76 / (1 + Math.exp((50 - 12 * index) / 12)))) / 10,
      }),
    );
    const blind = judgeFerment(weighed, litre);
    expect([blind.state, blind.expectedEndGravity]).toEqual(['stuck', null]);
    const told = judgeFerment(weighed, { volumeMl: 1000, sugarG: 170 });
    expect(told.state).toBe('finished');
    expect(told.strengthAbv?.low).toBeLessThan(10);
    expect(told.strengthAbv?.high).toBeGreaterThan(10);
    // Half as much again was in it: what stands there is not used up.
    expect(judgeFerment(weighed, { volumeMl: 1000, sugarG: 255 }).state).toBe('stuck');
    // In the middle of it nothing is finished.
    expect(judgeFerment(weighed.slice(0, 7), { volumeMl: 1000, sugarG: 170 }).state).toBe(
      'working',
    );
  });

  test('something taken from the balance is no gas', () => {
    const log = [0, 12, 24, 36, 48, 60].map((timeH, step) =>
      readingAt(timeH, { massG: 1500 - 8 * step - (step > 2 ? 250 : 0) }),
    );
    expect(judgeFerment(log, litre).strengthAbv?.high).toBeLessThan(9);
  });

  test('the same log gives the same bits, and an empty one a verdict', () => {
    const log = gravities([0, 1.06], [20, 1.05], [44, 1.02]);
    expect(judgeFerment(log, litre)).toEqual(judgeFerment(log, litre));
    expect(judgeFerment([], litre)).toMatchObject({ state: 'not-started', strengthAbv: null });
  });
});
