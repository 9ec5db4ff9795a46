import { expect, test } from 'vitest';
import { type RunInput, teachingRigs } from '#shared-core';
import { createVirtualStill } from '../../../main/virtual-probe/virtual-still.ts';
import { rehearsalSettings } from '../../../renderer/prepare/rehearse.ts';
import { createBatchSimulation } from '../../../shared-core/column/create-batch-simulation.ts';
import { pearFermentSetup } from '../../../shared-core/column/pear-ferment-setup.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';

/** As the virtual still is heated: by a person who eases the heat when vapour is nearly at the head. */
const easedS = 960;
const easedShare = 0.48;

/** When the head of the rehearsal truly passes 80 % vol for good [s]. */
function limitOfRehearsalS(): number {
  const { glassBeads: rig } = teachingRigs;
  const still = createBatchSimulation({
    ...pearFermentSetup(),
    rig,
    schedule: [
      { timeS: 0, kind: 'heat-on' },
      { timeS: easedS, kind: 'heat-eased', powerW: easedShare * rig.heater.powerW },
    ],
  });
  let limitS = 0;
  for (let timeS = easedS; timeS <= 4800; timeS += 5) {
    still.advance(timeS);
    if (still.state.headVapourStrengthAbv >= 80) limitS = timeS;
  }
  return limitS;
}

/** What the rehearsal's probes show, and the one mark that is made in it. */
function rehearsed(seed: number, untilS: number): RunInput[] {
  const still = createVirtualStill({ rig: 'glassBeads', seed, heated: false });
  still.heat('heat-on');
  const inputs: RunInput[] = [{ kind: 'mark', timeS: 0, markId: 1, mark: { type: 'heat-on' } }];
  for (let timeS = 0; timeS <= untilS; timeS += 1) {
    const { headC, potC } = still.readAt(timeS);
    for (const [channel, value] of [
      ['head', headC],
      ['pot', potC],
    ] as const) {
      if (value === null) continue;
      inputs.push({ kind: 'reading', timeS, channel, value, unit: '°C', quality: 'good' });
    }
  }
  return inputs;
}

test.each([1, 2])(
  'in the middle of a rehearsal (%s) its end is foreseen to a quarter, though more came over at first than ever after',
  (seed) => {
    const limitS = limitOfRehearsalS();
    const { forecasts } = analyseRun(rehearsalSettings(), rehearsed(seed, limitS), limitS);
    // From ten minutes after vapour came to ten minutes before the limit.
    const shares = forecasts.flatMap(({ madeS, mainFractionEndS: told }) =>
      told === null || madeS < 1620 || madeS > limitS - 600
        ? []
        : [(told.value - madeS) / (limitS - madeS)],
    );
    expect(shares.length).toBeGreaterThan(12);
    const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
    expect(mean).toBeGreaterThan(0.75);
    expect(mean).toBeLessThan(1.25);
  },
);
