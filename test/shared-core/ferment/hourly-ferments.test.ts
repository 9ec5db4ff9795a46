import { describe, expect, test } from 'vitest';
import { scoreFerment } from '../../../scripts/ferments/score-ferment.ts';
import { summarise } from '../../../scripts/ferments/summarise-ferments.ts';
import type { FermentReading } from '../../../shared-core/ferment/ferment-log.ts';
import { judgeFerment } from '../../../shared-core/ferment/judge-ferment.ts';

function reading(timeH: number, read: Partial<FermentReading>): FermentReading {
  const nothing = { gravity: null, massG: null, temperatureC: null, bubblesPerMin: null };
  return { timeH, ...nothing, isDegassed: false, ...read };
}
const litre = { volumeMl: 1000, sugarG: null };

describe('ferments that were read every hour', () => {
  test('tells strength from mass lost, and a finish only where sugar or gravity says how far it goes', () => {
    const weighed = Array.from({ length: 200 }, (_, timeH) =>
      reading(timeH, {
        massG: Math.round(10 * (1600 - 76 / (1 + Math.exp((50 - timeH) / 12)))) / 10,
      }),
    );
    const blind = judgeFerment(weighed, litre);
    expect(blind.state).toBe('stuck');
    expect(blind.because).toContain('measure the gravity');
    expect(blind.expectedEndGravity).toBeNull();
    const told = judgeFerment(weighed, { volumeMl: 1000, sugarG: 170 });
    expect(told.state).toBe('finished');
    // 76 g from 1 L, less the vapours, with what stays dissolved: see the check values of mass loss.
    expect(told.strengthAbv?.low).toBeLessThan(10);
    expect(told.strengthAbv?.high).toBeGreaterThan(10);
  });

  test('a warmth that was read once a day counts for the masses between', () => {
    // At 35 °C the gas takes along some 4 % of its mass, at 20 °C less than half of that.
    const warm = (everyH: number) =>
      Array.from({ length: 170 }, (_, timeH) =>
        reading(timeH, {
          massG: Math.round(10 * (1600 - 76 / (1 + Math.exp((50 - timeH) / 12)))) / 10,
          temperatureC: timeH % everyH === 0 ? 35 : null,
        }),
      );
    const [daily, always] = [judgeFerment(warm(24), litre), judgeFerment(warm(1), litre)];
    expect(
      Math.abs((daily.strengthAbv?.value ?? 0) - (always.strengthAbv?.value ?? 0)),
    ).toBeLessThan(0.1);
  });

  test('sugar that its gas does not account for is not used up, however still it stands', () => {
    // 551 g of table sugar in 3.1 L give some 267 g of gas in practice; a ferment killed at seven eighths of it stops at once.
    const killed = Array.from({ length: 200 }, (_, timeH) =>
      reading(timeH, {
        massG:
          Math.round(10 * (4000 - 233 * Math.min(1, (Math.max(0, timeH - 20) / 43) ** 1.6))) / 10,
      }),
    );
    const facts = { volumeMl: 3100, sugarG: 551 };
    for (const untilH of [120, 150, 199]) {
      const log = killed.filter(({ timeH }) => timeH <= untilH);
      expect(judgeFerment(log, facts).state).not.toBe('finished');
    }
  });

  test('follows a ferment that works faster than any it foresaw, or whose first gravity was wrong', () => {
    // Hot, on a fine balance: done in 36 h; the other two began 0.012 and 0.02 below what was read.
    for (const index of [24, 62, 76]) {
      const { strengthErrors } = scoreFerment('quince7', index);
      expect(strengthErrors.length).toBeGreaterThan(4);
      expect(Math.max(...strengthErrors.map(Math.abs))).toBeLessThan(1);
    }
  });
});

/** A busy machine takes its time: two of each kind are some ten seconds of work. */
const aFewMinutes = { timeout: 300_000 };

describe('simulated ferments, of kinetics that the judge does not share', () => {
  test(
    'none of 14 is called finished too early, stuck ones are told in two days, and intervals cover',
    aFewMinutes,
    () => {
      const scores = Array.from({ length: 14 }, (_, index) => scoreFerment('test', index));
      const sum = summarise(scores);
      expect(sum.finishedTooEarly).toBe(0);
      expect(sum.stuckToldPercent).toBeGreaterThanOrEqual(90);
      // Of so few ferments, whose readings share their errors, the share that is covered scatters by some 6 %.
      expect(sum.strengthCoveredPercent).toBeGreaterThan(76);
      expect(sum.finishCoveredPercent).toBeGreaterThan(76);
    },
  );
});
