import { createRandom } from '#shared-core';
import type { Random } from '../../shared-core/random/index.ts';
import type { FermentSetup } from './simulate-ferment.ts';

export const fermentKinds = [
  'normal',
  'sluggish',
  'stuck',
  'hot',
  'cold-night',
  'leaking-lock',
  'wrong-first-gravity',
] as const;
export type FermentKind = (typeof fermentKinds)[number];

/** How a class reads its ferment. */
export interface ReadingHabits {
  /** Hours of the day at which it is looked at. */
  readonly hoursOfDay: readonly number[];
  readonly skipsWeekends: boolean;
  /** Step in which gravity is read; null where it is not. */
  readonly gravityStep: number | null;
  readonly gravityNoise: number;
  /** First gravity off by this. */
  readonly firstGravityOff: number;
  readonly massStepG: number | null;
  readonly massNoiseG: number;
  /** A balance that writes by itself does so every so many hours. */
  readonly massEveryH: number | null;
  readonly readsTemperature: boolean;
  readonly countsBubbles: boolean;
  readonly mlPerBubble: number;
  /** What of the gas the lock lets through as bubbles, from an hour on. */
  readonly leak: { readonly fromH: number; readonly passes: number } | null;
}

export interface DrawnFerment {
  readonly kind: FermentKind;
  readonly setup: FermentSetup;
  readonly habits: ReadingHabits;
  readonly volumeMl: number;
  /** What the person says it is. */
  readonly statedVolumeMl: number;
  /** Sugar the person states [g]; null when they don't. */
  readonly statedSugarG: number | null;
  readonly hours: number;
  readonly startHourOfDay: number;
  readonly startDay: number;
}

/** A ferment and the way it is read, drawn by a seed. */
export function drawFerment(seed: string, index: number): DrawnFerment {
  const random = createRandom(`${seed}/${index}`);
  const kind = fermentKinds[index % fermentKinds.length] ?? 'normal';
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  const sugarGPerL = between(95, 235);
  const isWash = random.uniform() < 0.35;
  const volumeMl = 1000 * Math.exp(between(Math.log(0.5), Math.log(5)));
  const usual: FermentSetup = {
    sugarGPerL,
    sucroseShare: isWash ? 1 : between(0, 0.3),
    unfermentableGPerL: isWash ? between(2, 8) : between(10, 30),
    nitrogenMgPerL: between(100, 260),
    pitchGPerL: Math.exp(between(Math.log(0.1), Math.log(0.8))),
    ethanolYieldGPerG: between(0.462, 0.495),
    glycerolYieldGPerG: between(0.02, 0.045),
    lagH: between(2, 20),
    uptakeGPerGH: between(0.45, 0.8),
    toleranceGPerL: between(118, 150),
    deathPerH: between(0.0003, 0.0015),
    deathByEthanol: between(1, 4),
    temperatureC: warmth(between(18, 27), between(0.2, 2)),
    shock: null,
  };
  const setup = { ...usual, ...ofKind(kind, usual, random) };
  return {
    kind,
    setup,
    habits: drawHabits(kind, random, volumeMl),
    volumeMl,
    statedVolumeMl: volumeMl * (1 + 0.012 * random.normal()),
    statedSugarG:
      isWash && random.uniform() < 0.5 ? (setup.sugarGPerL / 1.0526) * (volumeMl / 1000) : null,
    hours: 24 * 24,
    startHourOfDay: between(8, 16),
    startDay: random.integer(0, 4),
  };
}

/** A room that cools at night. */
function warmth(meanC: number, swingK: number): (timeH: number) => number {
  return (timeH) => meanC + swingK * Math.sin(((timeH - 2) / 24) * 2 * Math.PI);
}

function ofKind(kind: FermentKind, setup: FermentSetup, random: Random): Partial<FermentSetup> {
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  switch (kind) {
    case 'sluggish':
      return { nitrogenMgPerL: between(45, 80), deathPerH: between(0.0008, 0.002) };
    case 'stuck':
      return random.uniform() < 0.5
        ? { shock: { atH: between(40, 110), kills: between(0.975, 0.998) } }
        : {
            nitrogenMgPerL: between(50, 100),
            sugarGPerL: between(190, 260),
            toleranceGPerL: between(70, 95),
            deathByEthanol: between(6, 12),
          };
    case 'hot':
      return { temperatureC: warmth(between(31, 37), between(0.5, 2)) };
    case 'cold-night': {
      const [fromH, hours, coldC] = [between(24, 96), between(10, 36), between(8, 13)];
      const usual = setup.temperatureC;
      return {
        temperatureC: (timeH) => {
          // Liquid cools and warms with a time of some four hours.
          const into = 1 - Math.exp(-Math.max(0, timeH - fromH) / 4);
          const out = 1 - Math.exp(-Math.max(0, timeH - fromH - hours) / 4);
          return usual(timeH) + (coldC - usual(timeH)) * (into - out);
        },
      };
    }
    default:
      return {};
  }
}

function drawHabits(kind: FermentKind, random: Random, volumeMl: number): ReadingHabits {
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  const visits = [[12.5], [8.5, 16], [8.5, 12.5, 16.5]][random.integer(0, 2)] ?? [12.5];
  const way = random.uniform();
  const gravityStep = [0.001, 0.001, 0.002, 0.0025][random.integer(0, 3)] ?? 0.001;
  const hasGravity = kind === 'wrong-first-gravity' || way < 0.8;
  const isDense = way > 0.65 && way < 0.95;
  const hasScale = isDense || !hasGravity || random.uniform() < 0.4;
  return {
    hoursOfDay: visits,
    skipsWeekends: random.uniform() < 0.5,
    gravityStep: hasGravity ? gravityStep : null,
    gravityNoise: between(0.0003, 0.0008),
    firstGravityOff:
      kind === 'wrong-first-gravity'
        ? (random.uniform() < 0.8 ? -1 : 1) * between(0.008, 0.025)
        : 0,
    massStepG: !hasScale ? null : isDense ? 0.1 : volumeMl > 2000 ? 2 : 1,
    massNoiseG: isDense ? 0.15 : 0.5,
    massEveryH: isDense ? 1 / 6 : null,
    readsTemperature: random.uniform() < 0.6,
    countsBubbles: kind === 'leaking-lock' || random.uniform() < 0.4,
    mlPerBubble: Math.exp(between(Math.log(0.1), Math.log(0.8))),
    leak: kind === 'leaking-lock' ? { fromH: between(0, 80), passes: between(0, 0.3) } : null,
  };
}
