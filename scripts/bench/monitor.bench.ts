/**
 * Readings a second through the whole monitor, with the forecast at its live rate of once a minute and without it,
 * for probes of 1, 10 and 100 Hz; the ratio tells what the forecast costs. And the longest single reading, which the window waits
 * for: of each reading the least of several runs, so that what the computer does besides does not count. Last, what it takes to make a
 * whole snapshot, and to look up what its texts were made from, where ten are sent to the window in a second.
 *
 * Usage: npx tsx scripts/bench/monitor.bench.ts
 */
import {
  createMonitor,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  pearFermentSetup,
  type RunInput,
  type RunSettings,
  simulateBatch,
  textsInSnapshot,
  wordingOf,
} from '#shared-core';
import { isEntryPoint } from '../checks/is-entry-point.ts';

const durationS = 3300;

const settings: RunSettings = {
  ...defaultRunSettings,
  charge: { volumeMl: 330, strengthAbv: 10.5, standardUncertaintyAbv: 0.3 },
  pressure: { ...defaultRunSettings.pressure, pressureKPa: 99.4 },
  attentionCheckS: null,
};

/** The demonstration run from cold to past the limit, as a probe of this rate reports it. */
function readings(perSecond: number): readonly RunInput[] {
  const { samples } = simulateBatch(pearFermentSetup(), { durationS });
  const probe = createProbeSignal({
    random: createRandom('monitor bench'),
    whiteNoiseK: 0.05,
    slowNoiseK: 0.05,
    quantumK: 1 / 16,
  });
  const inputs: RunInput[] = [];
  for (let index = 0; index < durationS * perSecond; index += 1) {
    const timeS = index / perSecond;
    const truthC = samples[Math.floor(timeS)]?.bulbTemperatureC ?? 20;
    const value = probe.read(timeS, truthC);
    if (value === null) continue;
    inputs.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
  }
  return inputs;
}

function readingsPerSecond(inputs: readonly RunInput[], forecasts: boolean): number {
  const rates = Array.from({ length: 5 }, () => {
    const monitor = createMonitor(settings, { forecasts });
    const from = performance.now();
    for (const input of inputs) monitor.push(input);
    return (1000 * inputs.length) / (performance.now() - from);
  });
  // The first two only warm up; of the others the middle.
  return rates.slice(2).sort((a, b) => a - b)[1] as number;
}

function longestReadingMs(inputs: readonly RunInput[]): number {
  const least = new Float64Array(inputs.length).fill(Number.POSITIVE_INFINITY);
  for (let repeat = 0; repeat < 5; repeat += 1) {
    const monitor = createMonitor(settings);
    for (const [index, input] of inputs.entries()) {
      const from = performance.now();
      monitor.push(input);
      least[index] = Math.min(least[index] as number, performance.now() - from);
    }
  }
  return least.reduce((longest, ms) => Math.max(longest, ms), 0);
}

/** Making snapshots, and the wording of what they say [µs each]: the least of several runs. */
function snapshotMicroseconds(inputs: readonly RunInput[]): { made: number; worded: number } {
  const least = { made: Number.POSITIVE_INFINITY, worded: Number.POSITIVE_INFINITY };
  for (let repeat = 0; repeat < 5; repeat += 1) {
    const monitor = createMonitor(settings, { forecasts: false });
    let madeMs = 0;
    let wordedMs = 0;
    for (const input of inputs) {
      const snapshot = monitor.push(input);
      const from = performance.now();
      const texts = textsInSnapshot(snapshot);
      JSON.stringify(snapshot);
      const made = performance.now();
      wordingOf(texts);
      wordedMs += performance.now() - made;
      madeMs += made - from;
    }
    least.made = Math.min(least.made, (1000 * madeMs) / inputs.length);
    least.worded = Math.min(least.worded, (1000 * wordedMs) / inputs.length);
  }
  return least;
}

export function run(): void {
  for (const perSecond of [1, 10, 100]) {
    const inputs = readings(perSecond);
    const without = readingsPerSecond(inputs, false);
    const whole = readingsPerSecond(inputs, true);
    console.log(
      `monitor, ${perSecond} Hz probe: ${Math.round(whole)} readings/s with the forecast (${Math.round(
        whole / perSecond,
      )} × real time), ${(without / whole).toFixed(2)} × as fast without it; longest reading ${longestReadingMs(inputs).toFixed(1)} ms`,
    );
  }
  const { made, worded } = snapshotMicroseconds(readings(10));
  console.log(
    `snapshot, 10 a second: ${made.toFixed(1)} µs to make and pack it, ${worded.toFixed(1)} µs for its wording`,
  );
}

if (isEntryPoint(import.meta.url)) run();
