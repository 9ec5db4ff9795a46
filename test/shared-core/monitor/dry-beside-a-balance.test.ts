import { expect, test } from 'vitest';
import {
  createBatchSimulation,
  createMonitor,
  createProbeSignal,
  createRandom,
  pearFermentSetup,
} from '#shared-core';
import { barometerSettings, head, mark } from './support.ts';

const charge = { volumeMl: 350, strengthAbv: 9 };
const everyS = 4;
const endS = 9000;
const failsS = 2400;

interface Moment {
  readonly timeS: number;
  readonly bulbC: number;
  readonly potMl: number;
  readonly receiverG: number;
}

/** A strong flame that nobody takes away, second by second; a gram of what comes over is 1.2 mL of it. */
function heatedOn(): readonly Moment[] {
  const base = pearFermentSetup();
  const still = createBatchSimulation({
    ...base,
    charge: { ...base.charge, ...charge },
    schedule: [{ timeS: 0, kind: 'heat-on', powerW: 130 }],
  });
  const moments: Moment[] = [];
  for (let timeS = everyS; timeS <= endS; timeS += everyS) {
    still.advance(timeS);
    const { bulbTemperatureC: bulbC, potVolumeMl: potMl, distillateVolumeMl } = still.state;
    moments.push({ timeS, bulbC, potMl, receiverG: distillateVolumeMl / 1.2 });
  }
  return moments;
}

const moments = heatedOn();

/** When the pot is called nearly dry, by a balance that shows so much. */
function dryCalledS(shownG: (moment: Moment) => number | null): number | null {
  const { pressureKPa } = pearFermentSetup();
  const monitor = createMonitor({
    ...barometerSettings,
    charge: { ...charge, standardUncertaintyAbv: 0.5 },
    pressure: { ...barometerSettings.pressure, pressureKPa: Number(pressureKPa) },
  });
  monitor.push(mark(1, 1, { type: 'heat-on' }));
  const probe = createProbeSignal({ random: createRandom(1), whiteNoiseK: 0.04 });
  for (const moment of moments) {
    const { timeS, bulbC } = moment;
    const value = probe.read(timeS, bulbC);
    if (value !== null) monitor.push(head(timeS, value));
    const grams = shownG(moment);
    if (grams === null) continue;
    monitor.push({
      kind: 'reading',
      timeS,
      channel: 'receiver',
      value: grams,
      unit: 'g',
      quality: 'good',
    });
  }
  const call = monitor.verdicts().alarms.find(({ alarm }) => alarm === 'near-dryness');
  return call?.raisedS ?? null;
}

test('a balance that stops, freezes or shows too little does not keep the call of a pot nearly dry from coming', () => {
  const frozenG = moments.findLast(({ timeS }) => timeS < failsS)?.receiverG ?? 0;
  const withoutS = dryCalledS(() => null);
  expect(withoutS).not.toBeNull();
  const after = (fails: (receiverG: number) => number | null): number =>
    dryCalledS(({ timeS, receiverG }) => (timeS < failsS ? receiverG : fails(receiverG))) ??
    Number.POSITIVE_INFINITY;
  const calledS = [
    after(() => null),
    after(() => frozenG),
    after((receiverG) => frozenG + (receiverG - frozenG) / 5),
  ];
  expect(Math.max(...calledS)).toBeLessThanOrEqual(withoutS ?? 0);
});
