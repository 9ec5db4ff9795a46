import { describe, expect, test } from 'vitest';
import {
  createBatchSimulation,
  createMonitor,
  createProbeSignal,
  createRandom,
  pearFermentSetup,
  type Snapshot,
} from '#shared-core';
import type { BatchEvent } from '../../../../shared-core/column/batch-event.ts';
import {
  followLeavings,
  isToAndFro,
  noLeavings,
} from '../../../../shared-core/monitor/words/leavings.ts';
import { head, pearSettings } from '../support.ts';
import { factsOf } from './facts.ts';

const workingW = 110;
const firstS = 1000;
const times = 40;

interface Second {
  readonly said: Snapshot;
  readonly trueAbv: number;
}

/** A still whose flame is taken away forty times for so long [s], once in every so many seconds, and nobody marks it. */
function watch(awayS: number, everyS: number): readonly Second[] {
  const flames = Array.from({ length: times }, (_, index): BatchEvent[] => {
    const atS = firstS + index * everyS;
    return [
      { timeS: atS, kind: 'heat-off' },
      { timeS: atS + awayS, kind: 'heat-on' },
      { timeS: atS + awayS + 1, kind: 'heat-eased', powerW: workingW },
    ];
  });
  const setup = pearFermentSetup();
  const still = createBatchSimulation({
    ...setup,
    charge: { ...setup.charge, volumeMl: 350, strengthAbv: 11 },
    schedule: [
      { timeS: 0, kind: 'heat-on', powerW: 130 },
      { timeS: 760, kind: 'heat-eased', powerW: workingW },
      ...flames.flat(),
    ],
  });
  const probe = createProbeSignal({
    random: createRandom('forty'),
    whiteNoiseK: 0.03,
    slowNoiseK: 0.03,
    quantumK: 1 / 16,
  });
  const charge = { volumeMl: 350, strengthAbv: 11, standardUncertaintyAbv: 0.3 };
  const monitor = createMonitor({ ...pearSettings, charge }, { forecasts: false });
  return Array.from({ length: firstS + times * everyS }, (_, timeS) => {
    still.advance(timeS);
    const value = probe.read(timeS, still.state.bulbTemperatureC);
    if (value !== null) monitor.push(head(timeS, value));
    return { said: monitor.advanceTo(timeS + 0.9), trueAbv: still.state.headVapourStrengthAbv };
  });
}

const shapeOf = ({ sentence }: Snapshot) => sentence.replace(/[\d.,–]+/g, '#');
const toAndFro = /^Vapour comes and goes at the thermometer/;

describe('a flame taken away and put back forty times, unmarked', () => {
  test('is one steady sentence from its third time on: no cool-down, no call for the heat', () => {
    const seconds = watch(35, 60);
    const leavings = seconds.filter(
      ({ said }, index) =>
        said.stage.condition === 'vapour-receded' &&
        seconds[index - 1]?.said.stage.condition !== 'vapour-receded',
    );
    expect(leavings.length).toBeGreaterThan(15);
    const beganAt = seconds.findIndex(({ said }) => toAndFro.test(said.sentence));
    const shapes = new Set(seconds.slice(beganAt).map(({ said }) => shapeOf(said)));
    expect([...shapes]).toEqual([
      'Vapour comes and goes at the thermometer# as with a flame taken away and put back: the head is at # °C#',
    ]);
    expect(seconds.filter(({ said }) => said.stage.stage === 'cool-down')).toEqual([]);
    expect(seconds.flatMap(({ said }) => said.alarms.map(({ alarm }) => alarm))).toEqual([]);
  });

  test('hides no true end: the heat is called off where the vapour gets too weak, and that is what is said', () => {
    const seconds = watch(40, 100);
    const called = seconds.find(({ said }) =>
      said.alarms.some(({ alarm }) => alarm === 'plateau-departure'),
    );
    // The limit is 80 % vol.
    expect(called?.trueAbv).toBeGreaterThan(79);
    expect(called?.trueAbv).toBeLessThan(83);
    expect(seconds.some(({ said }) => toAndFro.test(said.sentence))).toBe(true);
    expect(seconds.at(-1)?.said).toMatchObject({
      sentence: 'The main fraction has ended.',
      stage: { stage: 'tail' },
    });
  });
});

describe('vapour that leaves', () => {
  const leftAt = (...timesS: readonly number[]) =>
    timesS.reduce((before, timeS) => {
      const away = followLeavings(
        before,
        factsOf({ timeS }, { situation: { recededSinceS: timeS } }),
      );
      return followLeavings(away, factsOf({ timeS: timeS + 20 }));
    }, noLeavings);

  test('is a habit from the third time in a row, while each comes soon after the last', () => {
    expect(isToAndFro(leftAt(1000, 1100), factsOf({ timeS: 1130 }))).toBe(false);
    expect(isToAndFro(leftAt(1000, 1100, 1200), factsOf({ timeS: 1230 }))).toBe(true);
    expect(isToAndFro(leftAt(1000, 1100, 1300), factsOf({ timeS: 1330 }))).toBe(false);
  });

  test('is none once it stays away or stays there, nor where the heat is marked as off', () => {
    const leavings = leftAt(1000, 1100, 1200);
    expect(isToAndFro(leavings, factsOf({ timeS: 1351 }))).toBe(false);
    expect(isToAndFro(leavings, factsOf({ timeS: 1230, heat: 'off' }))).toBe(false);
  });
});
