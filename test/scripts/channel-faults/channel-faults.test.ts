import { describe, expect, test } from 'vitest';
import { createRandom, defaultRunSettings } from '#shared-core';
import type { ChannelCourse, ChannelRun } from '../../../scripts/channel-faults/channel-run.ts';
import {
  drawFault,
  type Fault,
  type FaultKind,
} from '../../../scripts/channel-faults/draw-fault.ts';
import { type CallSpan, delayAfterS } from '../../../scripts/channel-faults/heat-off-calls.ts';
import { judgeFaults } from '../../../scripts/channel-faults/judge-fault.ts';
import { strike } from '../../../scripts/channel-faults/strike.ts';

const seconds = Array.from({ length: 101 }, (_, index) => 10 * index);
const rising: ChannelCourse = {
  unit: '°C',
  timeS: seconds,
  values: seconds.map((atS) => atS / 100),
};

describe('a channel that is struck', () => {
  const base: Fault = { channel: 'pot', kind: 'jumps', fromS: 500, toS: 700, by: 36, times: 1 };
  const shows = (change: Partial<Fault>): (number | null)[] => {
    const { timeS, values } = strike(rising, { ...base, ...change }, createRandom(1));
    return [490, 600, 800].map((atS) => values[timeS.indexOf(atS)] ?? null);
  };

  test('is untouched before, and true again after a spell', () => {
    const kinds: readonly FaultKind[] = ['vanishes', 'freezes', 'jumps', 'drifts', 'at a limit'];
    expect(kinds.map((kind) => shows({ kind }))).toEqual([
      [4.9, null, 8],
      [4.9, 4.9, 8],
      [4.9, 42, 8],
      [4.9, 7, 8],
      [4.9, 36, 8],
    ]);
  });

  test('stays so where it is for good; a mass may be multiplied', () => {
    expect([
      shows({ kind: 'vanishes', toS: null }),
      shows({ kind: 'jumps', toS: null, by: 0, times: 10 }),
    ]).toEqual([
      [4.9, null, null],
      [4.9, 60, 80],
    ]);
  });
});

describe('a call that is wanted at 1000 s', () => {
  const delay = (
    ...spans: readonly [raisedS: number, clearedS: number | null][]
  ): number | null => {
    const calls = spans.map(
      ([raisedS, clearedS]): CallSpan => ({ alarm: 'plateau-departure', raisedS, clearedS }),
    );
    return delayAfterS({ calls }, 1000);
  };

  test('is there if it stands by then or five seconds later, and late or gone otherwise', () => {
    expect([
      delay([1000, null]),
      delay([1005, 1100]),
      delay([400, 1200]),
      delay([1006, null]),
      delay([400, 900]),
      delay([400, 900], [1300, null]),
      delay(),
    ]).toEqual([0, 0, 0, 6, null, 300, null]);
  });
});

/** A head that holds at the plateau, rises past the limit and goes on rising. */
function made(): ChannelRun {
  const random = createRandom('made run');
  const endS = 3000;
  const everyFive = Array.from({ length: endS / 5 }, (_, index) => 5 * index);
  const still = (unit: ChannelCourse['unit'], value: number): ChannelCourse => ({
    unit,
    timeS: everyFive,
    values: everyFive.map(() => value),
  });
  return {
    name: 'made',
    settings: { ...defaultRunSettings, attentionCheckS: null },
    ofHead: Array.from({ length: endS }, (_, timeS) => ({
      kind: 'reading',
      timeS,
      channel: 'head',
      value: (timeS < 500 ? 21 : 78.6 + Math.max(0, timeS - 2000) / 40) + 0.03 * random.normal(),
      unit: '°C',
      quality: 'good',
    })),
    channels: {
      pot: still('°C', 93),
      'condenser-outlet': still('°C', 16),
      room: still('°C', 21),
      receiver: still('g', 90),
      'air-pressure': still('kPa', 100.2),
    },
    heatOffS: endS,
    main: { fromS: 700, toS: 2200 },
    mainShare: (timeS) => Math.min(1, Math.max(0, (timeS - 700) / 1500)),
  };
}

test('faults are drawn within the run, and none of them costs the made run its call', () => {
  const run = made();
  const effects = [...judgeFaults(run, 8, 'test')];
  expect(effects).toHaveLength(8);
  for (const { fault, calls, lost, worstDelayS } of effects) {
    expect(fault.fromS).toBeLessThanOrEqual(run.heatOffS);
    expect({ hasCalls: calls > 0, lost, worstDelayS }).toEqual({
      hasCalls: true,
      lost: 0,
      worstDelayS: 0,
    });
  }
});

test('every channel and every kind of fault is drawn, for good and for a spell', () => {
  const random = createRandom('draws');
  const run = made();
  const faults = Array.from({ length: 400 }, () => drawFault(run, 2000, random));
  expect(new Set(faults.map(({ channel, kind }) => `${channel} ${kind}`)).size).toBe(35);
  expect(faults.filter(({ toS }) => toS === null).length).toBeGreaterThan(100);
  expect(faults.filter(({ toS }) => toS !== null).length).toBeGreaterThan(100);
});
