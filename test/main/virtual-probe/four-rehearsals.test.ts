import { describe, expect, test } from 'vitest';
import {
  azeotrope,
  createMonitor,
  defaultRunSettings,
  pearFermentSetup,
  type RunInput,
  type RunSettings,
} from '#shared-core';
import {
  createVirtualStill,
  type VirtualRigName,
  virtualRigs,
} from '../../../main/virtual-probe/virtual-still.ts';

const { charge, pressureKPa } = pearFermentSetup();
const settings: RunSettings = {
  ...defaultRunSettings,
  charge: { ...charge, standardUncertaintyAbv: 0.3 },
  pressure: { pressureKPa, standardUncertaintyKPa: 0.2, source: 'barometer', altitudeM: null },
  attentionCheckS: null,
};
const azeotropeC = azeotrope(pressureKPa).temperatureC;
const endS = 7200;
/** The last quarter of an hour is without heat. */
const offS = endS - 900;

function rehearsed(rig: VirtualRigName) {
  const still = createVirtualStill({ rig: virtualRigs[rig], seed: 5, heated: true });
  const heads = new Map<number, number>();
  const inputs: RunInput[] = [{ kind: 'mark', timeS: 0, markId: 1, mark: { type: 'heat-on' } }];
  for (let timeS = 0; timeS < endS; timeS += 1) {
    if (timeS === offS) {
      still.heat('heat-off');
      inputs.push({ kind: 'mark', timeS, markId: 2, mark: { type: 'heat-off' } });
    }
    const { headC } = still.readAt(timeS);
    if (headC === null) continue;
    if (timeS > 2) heads.set(timeS, headC);
    inputs.push({
      kind: 'reading',
      timeS,
      channel: 'head',
      value: headC,
      unit: '°C',
      quality: 'good',
    });
  }
  const monitor = createMonitor(settings);
  const said = inputs.map((input) => {
    const { timeS, stage } = monitor.push(input);
    return { timeS, stage: stage.stage, because: stage.because };
  });
  monitor.advanceTo(endS);
  /** Mean of the minute from here [°C]. */
  const minuteC = (fromS: number) => {
    const values = Array.from({ length: 60 }, (_, at) => heads.get(fromS + at)).filter(
      (value) => value !== undefined,
    );
    return values.reduce((sum, value) => sum + value, 0) / values.length;
  };
  return { ...monitor.verdicts(), said, minuteC, heads };
}

const endings: number[] = [];

describe.each(Object.keys(virtualRigs) as VirtualRigName[])('a rehearsal on %s', (rig) => {
  const { events, stages, said, minuteC, heads } = rehearsed(rig);

  test('never has its plateau ending before the head has left for good what it held', () => {
    for (const { event, timeS } of events) {
      if (event !== 'plateau-ending') continue;
      endings.push(timeS);
      const at = Math.floor(timeS);
      const arrivedS = stages.find(({ stage }) => stage === 'first-fraction')?.fromS ?? 0;
      const beforeC = steps(Math.ceil(arrivedS) + 180, at - 60).map(minuteC);
      const afterC = steps(at, offS - 60).map(minuteC);
      expect(beforeC.length).toBeGreaterThan(0);
      expect(Math.min(...afterC)).toBeGreaterThan(Math.min(...beforeC) + 0.1);
    }
  });

  test('has vapour bathe the bulb only where vapour can be', () => {
    const first = said.find(({ because }) => because.startsWith('Vapour bathes the bulb'));
    const bathedC = heads.get(Math.floor(first?.timeS ?? 0)) ?? 0;
    expect(bathedC).toBeGreaterThan(azeotropeC - 6);
  });

  test('cools down by what the head shows, told with where it stands', () => {
    const cooled = said.find(({ stage }) => stage === 'cool-down');
    const headC = heads.get(Math.floor(cooled?.timeS ?? 0)) ?? Number.NaN;
    const told = /it is at ([\d.]+) °C, ([\d.]+) K (below|above) the azeotrope/.exec(
      cooled?.because ?? '',
    );
    expect(cooled?.timeS).toBeGreaterThan(offS);
    expect(Math.abs(Number(told?.[1]) - headC)).toBeLessThan(1);
    expect(Number(told?.[2]) * (told?.[3] === 'below' ? -1 : 1)).toBeCloseTo(
      Number(told?.[1]) - azeotropeC,
      0,
    );
  });
});

test('some of them are drawn out long enough for their plateau to end', () => {
  expect(endings.length).toBeGreaterThan(1);
});

/** Every ten seconds from here to there. */
const steps = (fromS: number, toS: number): readonly number[] =>
  Array.from({ length: Math.max(0, Math.floor((toS - fromS) / 10)) }, (_, at) => fromS + 10 * at);
