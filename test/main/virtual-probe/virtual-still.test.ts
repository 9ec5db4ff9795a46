import { expect, test } from 'vitest';
import { createBatchSimulation, pearFermentSetup, teachingRigs } from '#shared-core';
import { createVirtualStill } from '../../../main/virtual-probe/virtual-still.ts';

type Rig = keyof typeof teachingRigs;

/** A still heated from the start by the person who comes with it, read every ten seconds. */
function minded(rig: Rig = 'glassBeads') {
  const still = createVirtualStill({ rig, seed: 1, heated: true });
  let timeS = 0;
  const until = (endS: number) => {
    let last = still.readAt(timeS);
    while (timeS < endS) {
      timeS += 10;
      last = still.readAt(timeS);
    }
    return { ...last, distilledMl: still.distilledMl() };
  };
  return { heat: still.heat, until };
}

/** What comes over of the same charge by a time, the heat turned on at once and eased to 48 % half a minute after the first drops [mL]. */
function easedMl(untilS: number, name: Rig = 'glassBeads'): number {
  const rig = teachingRigs[name];
  const still = createBatchSimulation({ ...pearFermentSetup(), rig, schedule: [] });
  still.applyEvent({ kind: 'heat-on' });
  let timeS = 0;
  while (still.state.distillateRateMlPerMin <= 0.25) {
    timeS += 1;
    still.advance(timeS);
  }
  still.advance(timeS + 30);
  still.applyEvent({ kind: 'heat-eased', powerW: 0.48 * rig.heater.powerW });
  still.advance(untilS);
  return still.state.distillateVolumeMl;
}

test('the heat is eased once drops have followed each other for half a minute, and left so while it drips', () => {
  for (const rig of Object.keys(teachingRigs) as Rig[]) {
    const { distilledMl } = minded(rig).until(1800);
    expect(distilledMl).toBeGreaterThan(9);
    expect(distilledMl).toBeCloseTo(easedMl(1800, rig), 6);
  }
});

test('a still that hardly drips any more is heated up again, and forgotten until its pot is dry and too hot to tell', () => {
  const { until } = minded();
  expect(until(7200).distilledMl).toBeGreaterThan(3 * easedMl(7200));
  expect(until(12_600)).toMatchObject({ potC: null, headC: expect.closeTo(99.4, 0) });
});

test('who takes the heat off, or eases it, is not gone against', () => {
  const off = minded();
  off.until(1800);
  off.heat('heat-off');
  const { distilledMl } = off.until(2400);
  expect(off.until(9000)).toEqual({
    potC: expect.any(Number),
    headC: expect.any(Number),
    distilledMl,
  });
  const eased = minded();
  eased.until(1800);
  eased.heat('heat-eased');
  expect(eased.until(9000).distilledMl).toBeCloseTo(easedMl(9000), 6);
});
