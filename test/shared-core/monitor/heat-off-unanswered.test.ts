import { expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, pearFermentSetup, simulateBatch } from '#shared-core';

test('a heat-off call that nobody answers says that the main fraction has ended once the tail runs', () => {
  const { samples } = simulateBatch(pearFermentSetup(), { durationS: 4200 });
  const monitor = createMonitor(
    {
      ...defaultRunSettings,
      pressure: { ...defaultRunSettings.pressure, pressureKPa: 99.4 },
      attentionCheckS: null,
    },
    { forecasts: false },
  );
  const said = new Set<string>();
  for (const { timeS, bulbTemperatureC } of samples) {
    // A sixteenth of a degree to and fro, so that no probe looks frozen.
    const value = Math.round(bulbTemperatureC * 16 + (timeS % 3) - 1) / 16;
    monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
    const { alarms, stage, sentence } = monitor.snapshot();
    if (alarms.some(({ alarm, state }) => alarm === 'plateau-departure' && state !== 'normal')) {
      said.add(`${stage.stage}: ${sentence}`);
    }
  }
  expect([...said]).toEqual([
    'main-fraction: The main fraction is ending.',
    'tail: The main fraction has ended.',
  ]);
});
