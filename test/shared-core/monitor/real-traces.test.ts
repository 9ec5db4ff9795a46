import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { createMonitor, type RunInput, type RunSettings, type Verdicts } from '#shared-core';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { barometerSettings, head } from './support.ts';

/**
 * Head temperatures measured at 1 Hz on a real laboratory column: noise, wander and bends as they are, not the physics of
 * ethanol and water. Source: Arweiler et al., Scientific Data 13 (2026) 513, doi 10.1038/s41597-026-07124-3, CC BY 4.0; named
 * again in each file.
 */
const folder = new URL('../../reference/real-traces/', import.meta.url).pathname;
const pressureKPa = 101.325;
const plateauC = 78.45;
const settings: RunSettings = {
  ...barometerSettings,
  pressure: { ...barometerSettings.pressure, pressureKPa, standardUncertaintyKPa: 0.3 },
};
const arrivalS = 780;
const beginS = 900;

/** The trace shifted to the plateau of the pressure, behind a warm-up made up to the trace's own tenths of a degree. */
function inputsOf(name: string): RunInput[] {
  const values = readFileSync(path.join(folder, name), 'utf8')
    .split('\n')
    .slice(3)
    .filter((line) => line !== '')
    .map((line) => Number(line.split(',')[1]));
  const means = values.slice(300).map((_, from) => mean(values.slice(from, from + 300)));
  const shiftK = plateauC - Math.min(...means);
  const first = values[0] ?? 0;
  const warmUp = Array.from({ length: beginS }, (_, timeS) => {
    const fromC = 21 - shiftK;
    const risen = timeS < arrivalS ? 0 : 1 - Math.exp(-(timeS - arrivalS) / 15);
    return Math.round(10 * (fromC + (first - fromC) * risen)) / 10;
  });
  return [...warmUp, ...values].map((value, timeS) => head(timeS, value + shiftK));
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function watched(name: string): { readonly verdicts: Verdicts; readonly limitS: number | null } {
  const inputs = inputsOf(name);
  const monitor = createMonitor(settings, { forecasts: false });
  const limitC = limitTemperatureC({ leastStrengthAbv: 80, pressureKPa });
  let limitS: number | null = null;
  for (const input of inputs) {
    monitor.push(input);
    if (input.kind === 'reading' && input.timeS > beginS && input.value > limitC) {
      limitS ??= input.timeS;
    }
  }
  return { verdicts: monitor.verdicts(), limitS };
}

test('73 min of a real plateau, from a head that starts nearly a kelvin high, raise no alarm and end nothing', () => {
  const { verdicts } = watched('plateau-only-1.csv');
  expect(verdicts.alarms).toEqual([]);
  expect(verdicts.stages.map(({ stage }) => stage)).toEqual([
    'warm-up',
    'first-fraction',
    'main-fraction',
  ]);
  expect(verdicts.events.map(({ event }) => event)).toEqual([
    'vapour-arrived',
    'first-fraction-ended',
  ]);
});

test('a real departure is told of minutes before the limit and called within half a minute of it', () => {
  const { verdicts, limitS } = watched('plateau-then-departure-1.csv');
  const endingS = verdicts.events.find(({ event }) => event === 'plateau-ending')?.timeS;
  const calls = verdicts.alarms.filter(({ alarm }) => alarm === 'plateau-departure');
  expect(limitS).not.toBeNull();
  expect((limitS ?? 0) - (endingS ?? Number.POSITIVE_INFINITY)).toBeGreaterThan(240);
  expect(calls).toHaveLength(1);
  expect(Math.abs((calls[0]?.raisedS ?? 0) - (limitS ?? 0))).toBeLessThan(30);
  expect(verdicts.alarms[0]?.alarm).toBe('plateau-departure');
});
