import { describe, expect, test } from 'vitest';
import { createMonitor, type RunInput } from '#shared-core';
import { mark, pearSettings, simulatedReadings } from './support.ts';

const calm = simulatedReadings({ durationS: 2000 });

function conditionAt(extra: readonly RunInput[], untilS: number): string | null {
  const monitor = createMonitor(pearSettings);
  const inputs = [...calm, ...extra].sort((a, b) => a.timeS - b.timeS);
  for (const input of inputs) if (input.timeS <= untilS) monitor.push(input);
  return monitor.snapshot().stage.condition;
}

describe('total reflux', () => {
  test('is said when two readings of the receiver minutes apart are the same, until more has come', () => {
    const marks = [
      mark(1400, 1, { type: 'volume-read', volumeMl: 6 }),
      mark(1600, 2, { type: 'volume-read', volumeMl: 6 }),
      mark(1800, 3, { type: 'volume-read', volumeMl: 8 }),
    ];
    expect([1500, 1700, 1900].map((untilS) => conditionAt(marks, untilS))).toEqual([
      null,
      'total-reflux',
      null,
    ]);
  });

  test('is seen by a balance without any mark', () => {
    const balance: RunInput[] = [];
    for (let timeS = 0; timeS <= 2000; timeS += 1) {
      const value = 85 + 0.02 * Math.max(0, Math.min(timeS, 1500) - 1100);
      balance.push({
        kind: 'reading',
        timeS,
        channel: 'receiver',
        value,
        unit: 'g',
        quality: 'good',
      });
    }
    expect([1500, 1900].map((untilS) => conditionAt(balance, untilS))).toEqual([
      null,
      'total-reflux',
    ]);
  });
});

describe('a balance and the forecast', () => {
  test('narrows the range of the end as volume marks do', () => {
    const width = (extra: readonly RunInput[]): number => {
      const monitor = createMonitor(pearSettings);
      const inputs = [...calm, ...extra].sort((a, b) => a.timeS - b.timeS);
      for (const input of inputs) monitor.push(input);
      const end = monitor.snapshot().forecast?.mainFractionEndS ?? null;
      return end === null ? Number.POSITIVE_INFINITY : end.high - end.low;
    };
    const balance: RunInput[] = [];
    for (let timeS = 0; timeS <= 2000; timeS += 1) {
      const value = 85 + 0.02 * Math.max(0, timeS - 1000);
      balance.push({
        kind: 'reading',
        timeS,
        channel: 'receiver',
        value,
        unit: 'g',
        quality: 'good',
      });
    }
    expect(width(balance)).toBeLessThan(0.9 * width([]));
  });
});
