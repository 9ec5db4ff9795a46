import { createRandom, defaultRunSettings, type RunSettings } from '#shared-core';
import type { Random } from '../../shared-core/random/index.ts';
import { molarVolumeMl, moleFractionOf } from './mixture.ts';
import type { HeatCourse } from './second-still.ts';
import type { SecondStill } from './stage-column.ts';

/** What is special about a run. */
export const secondKinds = [
  'plain',
  'removals-marked',
  'removals-unmarked',
  'eased-unmarked',
  'restless-heat',
  'vigreux',
  'weak-ferment',
  'water',
  'unwetted-bulb',
  'pressure-drift',
  'probe-faults',
] as const;
export type SecondKind = (typeof secondKinds)[number];

/** One run: the still, what is done with the heat, and what the bench knows of it. */
export interface SecondDraw {
  readonly kind: SecondKind;
  readonly still: SecondStill;
  readonly heat: HeatCourse;
  readonly settings: RunSettings;
  /** The person marks what is done with the heat; reads the receiver. */
  readonly marksHeat: boolean;
  readonly readsVolumes: boolean;
  readonly random: Random;
}

const shares: Readonly<Record<SecondKind, number>> = {
  plain: 0.22,
  'removals-marked': 0.12,
  'removals-unmarked': 0.14,
  'eased-unmarked': 0.14,
  'restless-heat': 0.03,
  vigreux: 0.1,
  'weak-ferment': 0.05,
  water: 0.03,
  'unwetted-bulb': 0.04,
  'pressure-drift': 0.06,
  'probe-faults': 0.07,
};

const strengthSdAbv = 0.5;
const volumeSdShare = 0.01;
const barometerSdKPa = 0.2;
/** A probe is off by up to so much, as likely by any of it, and is told to be [K]. */
export const mostBiasK = 0.3;

/** Draws a run of one of the kinds; the monitor is told of it what `settings` say and no more. */
export function drawSecondRun(
  seed: string,
  kinds: readonly SecondKind[] = secondKinds,
): SecondDraw {
  const random = createRandom(`second still ${seed}`);
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const spread = (low: number, high: number): number =>
    Math.exp(between(Math.log(low), Math.log(high)));
  const kind = drawKind(random, kinds);
  const isVigreux = kind === 'vigreux';

  const pressureKPa = between(70, 104);
  const toldMl = Math.round(spread(300, 2000));
  const toldAbv = Math.round(10 * between(6, 15)) / 10;
  const trueAbv = trueStrength(kind, toldAbv, random);
  const chargeMl = toldMl * (1 + volumeSdShare * random.normal());
  const stageCount = isVigreux ? 1 : random.integer(1, 8);
  const refluxRatio = isVigreux ? between(0.3, 0.8) : spread(0.5, 5);
  const leastStrengthAbv =
    isVigreux && random.uniform() < 0.5 ? 60 : pick(random, [70, 75, 80, 80, 85]);

  const size = chargeMl / 350;
  const heaterW = ((chargeMl * 4.1 * 72) / between(900, 2400)) * 1.15 + 8 * size ** 0.67;
  const heldMol = spread(0.012, 0.035) * size ** 0.8;
  const wallJPerK = (between(60, 180) * size ** 0.75) / stageCount;
  const filmWPerK = wallJPerK / between(2, 5);
  const lossWPerK = (between(0.04, 0.2) * heaterW) / 55 / stageCount;
  const ethanolMoleFraction = trueAbv === 0 ? 0 : moleFractionOf(trueAbv);
  const still: SecondStill = {
    pressureKPa,
    pressureDriftKPa:
      kind === 'pressure-drift'
        ? (random.uniform() < 0.5 ? -1 : 1) * between(0.6, 1.8)
        : 0.1 * random.normal(),
    roomC: between(17, 26),
    chargeMl,
    chargedMol: chargeMl / molarVolumeMl(ethanolMoleFraction),
    ethanolMoleFraction,
    lightMoleFraction: kind === 'water' ? 0 : spread(3e-6, 1.2e-4),
    stages: Array.from({ length: stageCount }, () => ({
      heldMol,
      wallJPerK,
      filmWPerK,
      lossWPerK: lossWPerK * between(0.7, 1.3),
    })),
    refluxRatio,
    drainS: between(2, 8),
    heaterW,
    heaterS: between(5, 90),
    potLossWPerK: (between(0.05, 0.15) * heaterW) / 75,
    bulbS: spread(3, 30) / 2.3,
    deadS: random.integer(0, 9),
  };
  const settings: RunSettings = {
    ...defaultRunSettings,
    leastStrengthAbv,
    charge: { volumeMl: toldMl, strengthAbv: toldAbv, standardUncertaintyAbv: strengthSdAbv },
    pressure: {
      pressureKPa: pressureKPa + barometerSdKPa * random.normal(),
      standardUncertaintyKPa: barometerSdKPa,
      source: 'barometer',
      altitudeM: null,
    },
    probe: { ...defaultRunSettings.probe, standardUncertaintyK: mostBiasK / Math.sqrt(3) },
    attentionCheckS: null,
    safetyConfirms: [{ check: 'bulb', role: 'technician' }],
  };
  const flowMlPerS = ((0.75 * heaterW) / 40_000 / (1 + refluxRatio)) * 58;
  const plateauS = (chargeMl * trueAbv) / 100 / flowMlPerS + 200;
  return {
    kind,
    still,
    heat: drawHeat(kind, plateauS, leastStrengthAbv, random),
    settings,
    marksHeat: kind === 'removals-marked' || (kind === 'plain' && random.uniform() < 0.5),
    readsVolumes: kind !== 'water' && random.uniform() < 0.4,
    random: random.fork('bench'),
  };
}

function drawKind(random: Random, kinds: readonly SecondKind[]): SecondKind {
  const total = kinds.reduce((sum, kind) => sum + shares[kind], 0);
  let left = total * random.uniform();
  for (const kind of kinds) {
    left -= shares[kind];
    if (left < 0) return kind;
  }
  return kinds[kinds.length - 1] ?? 'plain';
}

function pick(random: Random, values: readonly number[]): number {
  return values[random.integer(0, values.length - 1)] as number;
}

/** A ferment that stood still is told as strong as it should have become. */
function trueStrength(kind: SecondKind, toldAbv: number, random: Random): number {
  if (kind === 'water') return 0;
  if (kind === 'weak-ferment') return toldAbv * (0.3 + 0.25 * random.uniform());
  return Math.max(4, toldAbv + strengthSdAbv * random.normal());
}

function drawHeat(
  kind: SecondKind,
  plateauS: number,
  limitAbv: number,
  random: Random,
): HeatCourse {
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const heatShares: { fromS: number; share: number }[] = [];
  const removals: { fromS: number; toS: number }[] = [];
  if (kind === 'eased-unmarked' || (kind === 'plain' && random.uniform() < 0.3)) {
    let fromS = between(5, 40);
    let share = 1;
    for (let change = random.integer(2, 5); change > 0; change -= 1) {
      share = Math.max(0.45, share * between(0.72, 0.92));
      heatShares.push({ fromS, share });
      fromS += between(10, 70);
    }
  }
  if (kind === 'restless-heat') {
    for (let fromS = 300; heatShares.length < 8; fromS += between(120, 500)) {
      heatShares.push({ fromS, share: between(0.6, 1.1) });
    }
  }
  if (kind === 'removals-marked' || kind === 'removals-unmarked') {
    let fromS = between(30, 300);
    for (let removal = random.integer(2, 5); removal > 0; removal -= 1) {
      const goneS = between(20, 120);
      removals.push({ fromS, toS: fromS + goneS });
      fromS += goneS + between(120, Math.max(200, plateauS / 3));
    }
  }
  return { shares: heatShares, removals, weakForS: between(240, 900), limitAbv };
}
