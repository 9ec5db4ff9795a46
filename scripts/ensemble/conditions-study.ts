import {
  createBatchSimulation,
  createProbeSignal,
  createRandom,
  type RunInput,
} from '#shared-core';
import type { BatchEvent, BatchState } from '../../shared-core/column/index.ts';
import { analyseRun } from '../../shared-core/monitor/index.ts';
import type { AlarmRecord } from '../../shared-core/snapshot/index.ts';
import { quantile } from '../measuring/quantile.ts';
import { type DrawnRun, drawRun } from './draw-run.ts';

/** How long an alarm may take and still count as raised for what happened [s]. */
const noticedWithinS = 240;
const holdsForS = 1200;

interface Watched {
  readonly samples: readonly BatchState[];
  readonly alarms: readonly AlarmRecord[];
}

/** Runs a drawn still for some time and lets the monitor read it, with more channels where wanted. */
function watch(
  drawn: DrawnRun,
  untilS: number,
  extra: (samples: readonly BatchState[]) => readonly RunInput[] = () => [],
  endsWhen: (state: BatchState) => boolean = () => false,
): Watched {
  const still = createBatchSimulation(drawn.setup);
  const samples: BatchState[] = [still.state];
  for (let timeS = 1; timeS <= untilS && !endsWhen(still.state); timeS += 1) {
    still.advance(timeS);
    samples.push(still.state);
  }
  const probe = createProbeSignal(drawn.flaws);
  const inputs: RunInput[] = [];
  for (const { timeS, bulbTemperatureC } of samples) {
    const value = timeS % drawn.sampleEveryS === 0 ? probe.read(timeS, bulbTemperatureC) : null;
    if (value === null) continue;
    inputs.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
  }
  const all = [...inputs, ...extra(samples)].sort((a, b) => a.timeS - b.timeS);
  const { alarms } = analyseRun(drawn.settings, all, samples.length - 1);
  return { samples, alarms };
}

const heatOnly = (drawn: DrawnRun, more: readonly BatchEvent[] = []): DrawnRun => ({
  ...drawn,
  setup: {
    ...drawn.setup,
    schedule: [
      ...(drawn.setup.schedule ?? []).filter(
        ({ kind }) => kind === 'heat-on' || kind === 'heat-eased',
      ),
      ...more,
    ].sort((a, b) => a.timeS - b.timeS),
  },
});

const arrivalS = (drawn: DrawnRun): number | null => {
  const still = createBatchSimulation(drawn.setup);
  for (let timeS = 1; timeS < 4 * 3600; timeS += 1) {
    still.advance(timeS);
    if (still.state.bathedFraction > 0.9) return timeS;
  }
  return null;
};

/** Bumping that the head feels, for five minutes on the plateau, and the same runs without it. */
function surging(runs: number, seed: string): string {
  let felt = 0;
  let noticed = 0;
  let calmAlarms = 0;
  const delays: number[] = [];
  for (let index = 0; index < runs; index += 1) {
    const random = createRandom(`surging ${seed} ${index}`);
    const drawn = heatOnly(drawRun(`surging ${seed}/${index}`));
    const arrived = arrivalS(drawn);
    if (arrived === null) continue;
    const fromS = arrived + 500;
    const spell: BatchEvent = {
      timeS: fromS,
      kind: 'surging',
      durationS: 300,
      depth: 0.7 + 0.3 * random.uniform(),
      periodS: 15 + 25 * random.uniform(),
    };
    const calm = watch(drawn, arrived + holdsForS);
    calmAlarms += calm.alarms.filter(({ alarm }) => alarm === 'surging').length;
    const { samples, alarms } = watch(heatOnly(drawn, [spell]), arrived + holdsForS);
    const during = samples.slice(fromS + 60, fromS + 300).map((state) => state.bulbTemperatureC);
    const noiseK = Math.hypot(drawn.flaws.whiteNoiseK ?? 0, drawn.flaws.slowNoiseK ?? 0);
    // A slow or noisy probe does not show it: then there is nothing to notice.
    if (Math.max(...during) - Math.min(...during) < Math.max(2, 10 * noiseK)) continue;
    felt += 1;
    const raised = alarms.find((record) => record.alarm === 'surging' && record.raisedS >= fromS);
    if (raised === undefined || raised.raisedS > fromS + noticedWithinS) continue;
    noticed += 1;
    delays.push(raised.raisedS - fromS);
  }
  return `surging: noticed ${noticed} of ${felt} spells that move the bulb, after ${quantile(delays, 0.5)} s (median); false ${calmAlarms} in ${runs} calm runs`;
}

/** A charge that boils away within hours. */
const smallCharge = (drawn: DrawnRun, share: number): DrawnRun => ({
  ...drawn,
  setup: {
    ...drawn.setup,
    charge: { ...drawn.setup.charge, volumeMl: share * drawn.setup.charge.volumeMl },
  },
  settings: {
    ...drawn.settings,
    charge: { ...drawn.settings.charge, volumeMl: share * drawn.settings.charge.volumeMl },
  },
});

/** Nobody takes the heat off: what is left in the pot when the alarm comes. */
function dryness(runs: number, seed: string): string {
  const left: number[] = [];
  let silent = 0;
  for (let index = 0; index < runs; index += 1) {
    const drawn = smallCharge(heatOnly(drawRun(`dryness ${seed}/${index}`)), 0.25);
    const { volumeMl } = drawn.setup.charge;
    const { samples, alarms } = watch(
      drawn,
      10 * 3600,
      () => [],
      ({ potVolumeMl }) => potVolumeMl < 0.03 * volumeMl,
    );
    const raised = alarms.find(({ alarm }) => alarm === 'near-dryness');
    const boiledDry = (samples[samples.length - 1]?.potVolumeMl ?? 0) < 0.05 * volumeMl;
    const state = samples[Math.round(raised?.raisedS ?? -1)];
    if (state === undefined) silent += boiledDry ? 1 : 0;
    else left.push(state.potVolumeMl / volumeMl);
  }
  const shares = [0.05, 0.5, 0.95].map((share) => `${Math.round(100 * quantile(left, share))} %`);
  return `near-dryness: raised in ${left.length} of ${runs} small charges boiled for 10 h or to 3 %, with ${shares.join(' / ')} of it left (5/50/95th); boiled down in silence ${silent}`;
}

/** Cooling water that fails in every second run: the condenser's outlet warms to 60 °C within some minutes. */
function condenser(runs: number, seed: string): string {
  const delays: number[] = [];
  let failed = 0;
  let again = 0;
  let falseAlarms = 0;
  for (let index = 0; index < runs; index += 1) {
    const random = createRandom(`condenser ${seed} ${index}`);
    const drawn = heatOnly(drawRun(`condenser ${seed}/${index}`));
    const fails = index % 2 === 0;
    const failsS = 600 + 1200 * random.uniform();
    const overS = 60 + 240 * random.uniform();
    let crossedS = Number.POSITIVE_INFINITY;
    const { alarms } = watch(drawn, 3000, (samples) =>
      samples.map(({ timeS }): RunInput => {
        const share = fails ? Math.min(1, Math.max(0, (timeS - failsS) / overS)) : 0;
        const trueC = 22 + 38 * share;
        if (trueC > 40) crossedS = Math.min(crossedS, timeS);
        const value = trueC + 0.3 * random.normal();
        return {
          kind: 'reading',
          timeS,
          channel: 'condenser-outlet',
          value,
          unit: '°C',
          quality: 'good',
        };
      }),
    );
    const warm = alarms.filter(({ alarm }) => alarm === 'condenser-warm');
    if (!fails) {
      falseAlarms += warm.length;
      continue;
    }
    failed += 1;
    again += Math.max(0, warm.length - 1);
    if (warm[0] !== undefined) delays.push(warm[0].raisedS - crossedS);
  }
  return `condenser-warm: raised in ${delays.length} of ${failed} failures, ${quantile(delays, 0.5)} s (median), ${quantile(delays, 0.95)} s (95th) after 40 °C was passed; repeated ${again}, false ${falseAlarms}`;
}

/** The alarms that have nothing to do with the main fraction, each on seeded runs of its own. */
export function conditionsStudy(runs: number, seed: string): readonly string[] {
  return [surging(runs, seed), dryness(runs, seed), condenser(runs, seed)];
}
