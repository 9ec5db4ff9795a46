import { createRandom, defaultRunSettings, type RunSettings, teachingRigs } from '#shared-core';
import type { BatchEvent, BatchSetup, ProbeFlaws } from '../../shared-core/column/index.ts';
import type { Random } from '../../shared-core/random/index.ts';
import { type TwoLags, timeToShareS } from './two-lags.ts';

/** One run of the ensemble: the true still, the true probe, and what the monitor is told of them. */
export interface DrawnRun {
  readonly setup: BatchSetup;
  readonly flaws: ProbeFlaws;
  /** What real probes do besides, drawn and played apart from that: a seed keeps the noise it always had. */
  readonly bulbFlaws: ProbeFlaws;
  readonly bursts: ProbeFlaws;
  /** How far the true mixture boils off the model of it, in standard uncertainties of that. */
  readonly mixtureOffSds: number;
  readonly settings: RunSettings;
  readonly sampleEveryS: number;
  readonly marksHeat: boolean;
  /** Heat taken away for a moment is marked as well. */
  readonly marksRemovals: boolean;
  /** Interval of volume readings [s]; null when nobody reads the receiver. */
  readonly volumeEveryS: number | null;
  readonly plates: number;
  readonly refluxRatio: number;
  readonly beside: readonly Instrument[];
  readonly besideRandom: Random;
}

/** A probe is off by up to so much, as likely by any of it [K]. */
const mostBiasK = 0.3;

/** What stands beside the head, or is stated of the heat. */
export const instruments = ['balance', 'stated-heat', 'pot-probe'] as const;
export type Instrument = (typeof instruments)[number];

/** A heat is stated as well as a meter at the plug shows it. */
const statedHeatShareSd = 0.05;

/** Heat that one mL/min of strong distillate needs: 38.6 kJ/mol over 58.4 mL/mol [W·min/mL]. */
const wattPerMlPerMin = 11;

const between = (random: Random, low: number, high: number): number =>
  low + (high - low) * random.uniform();

/** What a still may be like. */
export interface StillRanges {
  readonly plates: readonly [low: number, high: number];
  readonly refluxRatio: readonly [low: number, high: number];
  readonly strengthAbv: readonly [low: number, high: number];
}

/** Columns as teaching labs have them. */
export const teachingStills: StillRanges = {
  plates: [2, 9],
  refluxRatio: [0.8, 5],
  strengthAbv: [6, 15],
};

/** Little or no column, weak ferments: most of these never give the strength that is asked for, or only for a moment. */
export const poorStills: StillRanges = {
  plates: [1, 2.5],
  refluxRatio: [0.2, 1.2],
  strengthAbv: [5, 12],
};

/**
 * Draws a run. The monitor gets none of these numbers: only a barometer reading, the charge as measured,
 * and its default lag, whatever the true one is.
 */
export function drawRun(
  seed: number | string,
  ranges: StillRanges = teachingStills,
  beside: readonly Instrument[] = [],
): DrawnRun {
  const random = createRandom(`ensemble ${seed}`);
  const plates = between(random, ...ranges.plates);
  const refluxRatio = between(random, ...ranges.refluxRatio);
  const pressureKPa = between(random, 70, 104);
  const strengthAbv = between(random, ...ranges.strengthAbv);
  const volumeMl = between(random, 250, 500);
  const distillateW = wattPerMlPerMin * between(random, 0.6, 2);
  const lossShare = between(random, 0.2, 1);
  const lossRefluxRatio = refluxRatio * lossShare;
  const columnDutyW = distillateW * lossRefluxRatio;
  const boilUpW = distillateW * (1 + refluxRatio);
  const holdUpMl = between(random, 0.3, 1) * plates;
  const { simpleHead: base } = teachingRigs;
  const lags = drawLags(random.fork('lags'), between(random, 3, 30));
  const rig = {
    ...base,
    description: `${plates.toFixed(1)} plates, reflux ${refluxRatio.toFixed(1)}`,
    plates,
    column: {
      heatCapacityJPerK: between(random, 60, 200),
      lossWPerK: (0.85 * columnDutyW) / 62,
      holdUpMl,
      drainS: between(random, 5, 15),
    },
    head: { ...base.head, lossWPerK: (0.15 * columnDutyW) / 62 },
    bulb: { wetT90S: Math.LN10 * lags.fastS, dryT90S: between(random, 60, 120) },
    heater: {
      powerW: boilUpW + base.flask.lossWPerK * 75,
      timeConstantS: between(random, 20, 90),
    },
    returnedFraction: (refluxRatio - lossRefluxRatio) / (1 + refluxRatio - lossRefluxRatio),
  };
  const schedule = drawSchedule(random, rig.heater.powerW, volumeMl, distillateW);
  const noiseK = between(random, 0.02, 0.2);
  const slowShare = between(random, 0.2, 0.9);
  const flaws: ProbeFlaws = {
    random: random.fork('probe'),
    whiteNoiseK: noiseK * Math.sqrt(1 - slowShare),
    slowNoiseK: noiseK * Math.sqrt(slowShare),
    slowNoiseS: between(random, 10, 20),
    biasK: between(random, -mostBiasK, mostBiasK),
    driftKPerHour: between(random, -0.05, 0.05),
    quantumK: random.uniform() < 0.5 ? 1 / 16 : random.uniform() < 0.5 ? 0.1 : 0,
    dropoutsPerHour: between(random, 0, 3),
    dropoutS: between(random, 3, 20),
    spikesPerHour: between(random, 0, 6),
    spikeK: between(random, 2, 30),
    powerOnReadings: random.integer(0, 2),
    resetsOnDropout: random.uniform() < 0.3,
  };
  const barometerSdKPa = 0.3;
  const strengthSdAbv = 0.2;
  const statedW = rig.heater.powerW * (1 + statedHeatShareSd * random.fork('stated heat').normal());
  const settings: RunSettings = {
    ...defaultRunSettings,
    charge: {
      volumeMl,
      strengthAbv: Math.max(1, strengthAbv + strengthSdAbv * random.normal()),
      standardUncertaintyAbv: strengthSdAbv,
    },
    pressure: {
      pressureKPa: pressureKPa + barometerSdKPa * random.normal(),
      standardUncertaintyKPa: barometerSdKPa,
      source: 'barometer',
      altitudeM: null,
    },
    // Told as it is drawn: the error of a probe that was held against a reference.
    probe: { ...defaultRunSettings.probe, standardUncertaintyK: mostBiasK / Math.sqrt(3) },
    rig: { ...defaultRunSettings.rig, heatW: beside.includes('stated-heat') ? statedW : null },
    attentionCheckS: null,
    safetyConfirms: [{ check: 'bulb', role: 'technician' }],
  };
  const setup: BatchSetup = {
    charge: { volumeMl, strengthAbv },
    rig,
    pressureKPa: [
      { timeS: 0, pressureKPa },
      { timeS: 20_000, pressureKPa: pressureKPa + between(random, -0.3, 0.3) },
    ],
    roomTemperatureC: between(random, 16, 26),
    schedule,
  };
  const sampleEveryS = random.uniform() < 0.7 ? 1 : random.integer(2, 5);
  const marksHeat = random.uniform() < 0.5;
  return {
    setup,
    flaws,
    ...drawRealFlaws(random.fork('real probe'), lags),
    mixtureOffSds: random.fork('mixture').normal(),
    settings,
    sampleEveryS,
    marksHeat,
    marksRemovals: marksHeat && random.fork('removals').uniform() < 0.5,
    volumeEveryS: random.uniform() < 0.5 ? null : between(random, 240, 480),
    plates,
    refluxRatio,
    beside,
    besideRandom: random.fork('beside'),
  };
}

/**
 * A bulb whose reading makes 90 % of a step within so long, part of it slower than the rest.
 *
 * Source: eight one-wire sensors in ice water had t90/t63 of 2.6 … 4.6, one lag has 2.30; test/reference/real-traces.
 */
export function drawLags(random: Random, t90S: number): TwoLags {
  const unit = {
    fastS: 1,
    slowShare: between(random, 0.2, 0.34),
    slowS: between(random, 2.5, 5),
  };
  const scale = t90S / timeToShareS(unit, 0.9);
  return { fastS: scale, slowShare: unit.slowShare, slowS: scale * unit.slowS };
}

/**
 * What probes measured by others did: wander of 0.005 … 0.04 K over a minute, and of every fifth probe bursts of fault values of some
 * seconds.
 *
 * Source: figures of open series of a thermocouple amplifier and a laboratory column; test/reference/real-traces.
 */
function drawRealFlaws(
  random: Random,
  { slowShare, slowS }: TwoLags,
): Pick<DrawnRun, 'bulbFlaws' | 'bursts'> {
  return {
    bulbFlaws: {
      random: random.fork('wander'),
      slowShare,
      slowShareS: slowS,
      wanderK: between(random, 0.005, 0.04),
      wanderS: 120,
    },
    bursts: {
      random: random.fork('bursts'),
      burstsPerHour: random.uniform() < 0.2 ? between(random, 1, 6) : 0,
      burstS: between(random, 1, 6),
      // A one-wire sensor that does not answer, an amplifier without its thermocouple.
      faultC: random.uniform() < 0.5 ? -127 : 2047.75,
    },
  };
}

/** Heat on from cold, stronger until it boils; then taken away two to four times; a draught or two. */
function drawSchedule(
  random: Random,
  powerW: number,
  volumeMl: number,
  distillateW: number,
): readonly BatchEvent[] {
  const heatUpW = powerW * between(random, 1, 2.2);
  const boilsAtS = (volumeMl * 4.1 * 72) / (heatUpW * 0.9);
  const plateauS = (60 * 0.06 * volumeMl * 11) / distillateW;
  const events: BatchEvent[] = [
    { timeS: 0, kind: 'heat-on', powerW: heatUpW },
    { timeS: boilsAtS, kind: 'heat-eased', powerW },
  ];
  let timeS = boilsAtS * 0.5;
  const removals = random.integer(2, 4);
  for (let index = 0; index < removals; index += 1) {
    timeS += between(random, 0.2, 1) * ((boilsAtS * 0.5 + 1.2 * plateauS) / removals);
    const goneS = between(random, 20, 120);
    events.push({ timeS, kind: 'heat-removed' }, { timeS: timeS + goneS, kind: 'heat-returned' });
    timeS += goneS + 60;
  }
  const draughts = random.integer(0, 2);
  for (let index = 0; index < draughts; index += 1) {
    events.push({
      timeS: boilsAtS + between(random, 0.1, 1) * plateauS,
      kind: 'draught',
      durationS: between(random, 20, 90),
      lossFactor: between(random, 1.2, 2),
    });
  }
  return events.sort((a, b) => a.timeS - b.timeS);
}
