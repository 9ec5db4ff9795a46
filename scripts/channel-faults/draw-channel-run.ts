import { createRandom, type RunSettings } from '#shared-core';
import type { BatchState } from '../../shared-core/column/index.ts';
import type { Random } from '../../shared-core/random/index.ts';
import { byHandRun, inputsOf } from '../by-hand/by-hand-run.ts';
import { byHandTruth } from '../by-hand/by-hand-truth.ts';
import { drawRun, poorStills, teachingStills } from '../ensemble/draw-run.ts';
import { shownG } from '../ensemble/readings-beside.ts';
import { simulateRun } from '../ensemble/simulate-run.ts';
import { readTruth } from '../ensemble/truth.ts';
import type { ChannelCourse, ChannelRun, StruckChannel } from './channel-run.ts';

/** How much more a mean strength is asked for than at the limit [% vol]. */
const purityAboveLimitAbv = 6;
const sideEveryS = 5;
/** So many runs in ten stop by the forecast, or end their first fraction by volume: there a channel has most to say. */
const byForecastInTen = 2;
const byVolumeInTen = 1;

/** A run of the still heated by hand, or of the project's own still: every third. */
export function drawChannelRun(seed: string, index: number): ChannelRun {
  const random = createRandom(`channel faults ${seed}/${index}`);
  return index % 3 === 2
    ? ownStill(`${seed}/${index}`, random)
    : byHand(`${seed}/${index}`, random);
}

function byHand(seed: string, random: Random): ChannelRun {
  const run = byHandRun(seed);
  const { mainFromS, limitS } = byHandTruth(run);
  const { heatOffS, aboveLimitMl } = run.course;
  return {
    name: `by hand ${seed}`,
    settings: settingsAs(run.settings, random),
    ofHead: inputsOf(run, []),
    channels: run.report.side,
    heatOffS,
    ...mainOf(mainFromS, limitS ?? heatOffS, (timeS) => aboveLimitMl[timeS] as number),
  };
}

function ownStill(seed: string, random: Random): ChannelRun {
  const run = simulateRun(drawRun(seed, random.uniform() < 0.8 ? teachingStills : poorStills));
  const { mainFromS, limitS } = readTruth(run);
  const { samples, heatOffS } = run;
  return {
    name: `own still ${seed}`,
    settings: settingsAs(run.settings, random),
    ofHead: run.inputs,
    channels: besideOwnStill(run.samples as readonly BatchState[], random),
    heatOffS,
    ...mainOf(mainFromS, limitS ?? heatOffS, (timeS) => samples[timeS]?.aboveLimitMl ?? 0),
  };
}

function mainOf(
  fromS: number | null,
  toS: number,
  aboveLimitMl: (timeS: number) => number,
): Pick<ChannelRun, 'main' | 'mainShare'> {
  if (fromS === null) return { main: null, mainShare: () => null };
  const startMl = aboveLimitMl(fromS);
  const allMl = aboveLimitMl(toS) - startMl;
  const within = (timeS: number): number => Math.round(Math.min(toS, Math.max(fromS, timeS)));
  return {
    main: { fromS, toS },
    mainShare: (timeS) => (aboveLimitMl(within(timeS)) - startMl) / allMl,
  };
}

/** The run's settings, in some runs so that conclusions hang on more than the head. */
function settingsAs(settings: RunSettings, random: Random): RunSettings {
  const drawn = random.integer(0, 9);
  if (drawn < byForecastInTen) {
    const leastMeanStrengthAbv = settings.leastStrengthAbv + purityAboveLimitAbv;
    return { ...settings, stop: { kind: 'purity-against-recovery', leastMeanStrengthAbv } };
  }
  if (drawn >= byForecastInTen + byVolumeInTen) return settings;
  const volumeMl = Math.round(settings.charge.volumeMl / 50);
  return { ...settings, firstFraction: { kind: 'volume', volumeMl } };
}

/** What instruments beside the project's own still would say, as those of the still heated by hand do. */
function besideOwnStill(
  samples: readonly BatchState[],
  random: Random,
): Record<StruckChannel, ChannelCourse> {
  const potOffsetK = 0.4 * random.normal();
  const waterC = 10 + 8 * random.uniform();
  const every = samples.filter(({ timeS }) => timeS % sideEveryS === 0);
  const timeS = every.map((sample) => sample.timeS);
  const course = (
    unit: ChannelCourse['unit'],
    quantum: number,
    read: (sample: BatchState) => number,
  ): ChannelCourse => ({
    unit,
    timeS,
    values: every.map((sample) => quantum * Math.round(read(sample) / quantum)),
  });
  return {
    pot: course(
      '°C',
      0.0625,
      ({ potTemperatureC }) => potTemperatureC + potOffsetK + 0.05 * random.normal(),
    ),
    'condenser-outlet': course(
      '°C',
      0.0625,
      ({ distillateRateMlPerMin }) =>
        waterC + 3 * Math.min(4, distillateRateMlPerMin) + 0.1 * random.normal(),
    ),
    room: course('°C', 0.1, ({ timeS: atS }) => 21 + atS / 7200 + 0.05 * random.normal()),
    receiver: course('g', 0.1, ({ receiver }) => shownG(receiver)),
    'air-pressure': course(
      'kPa',
      0.01,
      ({ pressureKPa }) => pressureKPa + 0.03 + 0.02 * random.normal(),
    ),
  };
}
