import { expect, test } from 'vitest';
import { createMonitor, createRandom, defaultRunSettings } from '#shared-core';

test.each([
  { everyS: 1, oddC: 38.75 },
  { everyS: 2, oddC: 38.75 },
  { everyS: 2, oddC: 55 },
  { everyS: 5, oddC: 38.75 },
  { everyS: 5, oddC: 70 },
])(
  'one odd reading of $oddC °C in a warm-up read every $everyS s is not taken for vapour',
  ({ everyS, oddC }) => {
    const random = createRandom('warm-up');
    const monitor = createMonitor({ ...defaultRunSettings, attentionCheckS: null });
    const stages = new Set<string>();
    for (let timeS = 0; timeS <= 900; timeS += everyS) {
      const value = timeS === 600 ? oddC : 22 + 0.15 * random.normal();
      const input = {
        kind: 'reading',
        timeS,
        channel: 'head',
        unit: '°C',
        quality: 'good',
      } as const;
      stages.add(monitor.push({ ...input, value }).stage.stage);
    }
    expect([...stages]).toEqual(['warm-up']);
  },
);
