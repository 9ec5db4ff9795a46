import { createRandom, defaultRunSettings, type RunSettings, stationPressure } from '#shared-core';
import type { Random } from '../../shared-core/random/index.ts';
import type { StillSetup } from './hand-heated-still.ts';
import { type TwoLags, twoLags } from './hung-bulb.ts';
import type { Habit } from './person.ts';
import { molarVolumeOf, moleFractionOf } from './wilson-mixture.ts';

/** What a run is like; each run has several of these, and figures are broken down by each. */
export const tags = [
  'steady',
  'by hand',
  'mantle',
  'ferment',
  'weak packing',
  'second distillation',
  'denatured',
  'water',
  'pressure right',
  'pressure unknown',
  'pressure wrong',
  'bulb right',
  'bulb high',
  'bulb low',
  'probe change',
] as const;
export type Tag = (typeof tags)[number];

type Charge = 'ferment' | 'weak packing' | 'second distillation' | 'denatured' | 'water';
type PressureKnowledge = 'right' | 'channel' | 'altitude' | 'unknown' | 'wrong';
type Hanging = 'right' | 'high' | 'low';

export const sideChannels = [
  'pot',
  'condenser-outlet',
  'room',
  'receiver',
  'air-pressure',
] as const;
export type SideChannel = (typeof sideChannels)[number];

/** The probe at the head, as it reports. */
export interface HeadProbe {
  readonly offsetK: number;
  readonly noiseK: number;
  /** Share of the noise that lasts, and how long [s]. */
  readonly slowShare: number;
  readonly slowS: number;
  readonly wanderK: number;
  readonly quantumK: number;
  readonly everyS: number;
  /** Bursts of fault values an hour (a thermocouple's amplifier). */
  readonly burstsPerH: number;
}

export interface ProbeChange {
  /** When, as a share of the run; how long nothing is heard [s]; whether the change is recognised. */
  readonly atShare: number;
  readonly gapS: number;
  readonly recognised: boolean;
  readonly offsetK: number;
  readonly lag: TwoLags;
}

/** One run: the still, the bench, and what is known of them. */
export interface ByHandDraw {
  readonly tags: readonly Tag[];
  readonly still: StillSetup;
  readonly settings: RunSettings;
  readonly probe: HeadProbe;
  readonly probeChange: ProbeChange | null;
  /** Share of the acts with the heat that are marked, and the only kind that is; null for either. */
  readonly marksShare: number;
  readonly marksOnly: 'heat-off' | 'heat-on' | null;
  readonly marksStop: boolean;
  /** How many times the receiver is read. */
  readonly volumesRead: number;
  readonly channels: readonly SideChannel[];
  readonly random: Random;
}

/** Draws a run; the monitor is told what `settings` say and no more. */
export function drawByHand(seed: string): ByHandDraw {
  const random = createRandom(`by hand ${seed}`);
  const habit = weighted<Habit>(random, { steady: 0.33, flame: 0.55, mantle: 0.12 });
  const charge = weighted<Charge>(random, {
    ferment: 0.72,
    'weak packing': 0.08,
    'second distillation': 0.08,
    denatured: 0.08,
    water: 0.04,
  });
  const knowledge = weighted<PressureKnowledge>(random, {
    right: 0.4,
    channel: 0.06,
    altitude: 0.08,
    unknown: 0.28,
    wrong: 0.18,
  });
  const hanging = weighted<Hanging>(random, { right: 0.62, high: 0.24, low: 0.14 });
  const altitudeM = random.uniform() < 0.4 ? 400 * random.uniform() : 2000 * random.uniform();
  const weatherKPa = 0.8 * random.normal();
  const pressureKPa = 101.325 * (1 - 2.25577e-5 * altitudeM) ** 5.25588 + weatherKPa;
  const leastStrengthAbv = random.uniform() < 0.84 ? 80 : random.uniform() < 0.5 ? 75 : 85;
  const { still, toldMl, toldAbv } = drawStill(random.fork('still'), {
    habit,
    charge,
    hanging,
    pressureKPa,
    leastStrengthAbv,
  });
  const bench = random.fork('bench');
  const probe = drawProbe(bench);
  const settings: RunSettings = {
    ...defaultRunSettings,
    name: 'Pear-juice ferment, heated by hand',
    leastStrengthAbv,
    charge: { volumeMl: toldMl, strengthAbv: toldAbv, standardUncertaintyAbv: 0.5 },
    pressure: drawPressure(bench, knowledge, pressureKPa, altitudeM),
    probe: { ...defaultRunSettings.probe, silenceS: Math.max(5, 3 * probe.everyS) },
    attentionCheckS: null,
    safetyConfirms:
      random.fork('look').uniform() < seenShare[hanging]
        ? [{ check: 'bulb', role: 'technician' }]
        : [],
  };
  const changesProbe = bench.uniform() < 0.1;
  const marks = bench.uniform();
  const channels = sideChannels.filter((channel) =>
    channel === 'air-pressure' ? knowledge === 'channel' : bench.uniform() < 0.22,
  );
  return {
    tags: tagsOf({ habit, charge, knowledge, hanging, changesProbe }),
    still,
    settings,
    probe,
    probeChange: changesProbe
      ? {
          atShare: between(bench, 0.25, 0.85),
          gapS: between(bench, 10, 60),
          recognised: bench.uniform() < 0.7,
          offsetK: between(bench, -1, 1),
          lag: drawLag(bench, 18),
        }
      : null,
    marksShare: marks < 0.5 ? 0 : (habit === 'steady' ? 2 : 0.6) * (marks - 0.5),
    marksOnly: bench.uniform() < 0.6 ? null : bench.uniform() < 0.5 ? 'heat-off' : 'heat-on',
    marksStop: bench.uniform() < 0.5,
    volumesRead: bench.uniform() < 0.35 ? bench.integer(1, 6) : 0,
    channels,
    random: random.fork('report'),
  };
}

/** Half of the people look how the bulb hangs; four in five of those who see it hang too high hang it anew, and are not drawn. */
const seenShare = { right: 0.5, low: 0.5, high: 0.1 } as const;

interface StillKind {
  readonly habit: Habit;
  readonly charge: Charge;
  readonly hanging: Hanging;
  readonly pressureKPa: number;
  readonly leastStrengthAbv: number;
}

/** Heat of evaporation, and of warming a charge to the boil, round. */
const latentJPerMol = 40_000;
const warmingJPerMl = 4.1 * 74;

function drawStill(
  random: Random,
  { habit, charge, hanging, pressureKPa, leastStrengthAbv }: StillKind,
): { still: StillSetup; toldMl: number; toldAbv: number } {
  const toldMl = 10 * Math.round(spread(random, 150, 1000) / 10);
  const toldAbv =
    charge === 'second distillation'
      ? Math.round(between(random, 36, 44))
      : Math.round(10 * between(random, 5, 15)) / 10;
  const abv = charge === 'water' ? 0 : Math.max(3, toldAbv + 0.5 * random.normal());
  const chargeMl = toldMl * (1 + 0.01 * random.normal());
  const x = moleFractionOf(abv);
  const sumMol = chargeMl / molarVolumeOf(x);
  const ethanolMl = (chargeMl * Math.max(abv, 8)) / 100;

  const roomC = between(random, 16, 27);
  const mainS = spread(random, 700, 3000);
  const usualDistillateMolPerS = (1.1 * ethanolMl) / 62 / mainS;
  const isWeak = charge === 'weak packing';
  const refluxRatio = isWeak ? between(random, 0.15, 0.6) : spread(random, 0.8, 4);
  const usualMolPerS = usualDistillateMolPerS * (1 + refluxRatio);
  const columnLossW = usualDistillateMolPerS * refluxRatio * latentJPerMol;
  const lossWPerK = columnLossW / (84 - roomC);
  const potLossWPerK = between(random, 0.06, 0.16) * (chargeMl / 350) ** 0.67;
  const workingW = usualMolPerS * latentJPerMol + (92 - roomC) * potLossWPerK;
  const warmingS = between(random, 700, 2000);
  const warmingW = (chargeMl * warmingJPerMl) / warmingS;
  const size = Math.sqrt(usualMolPerS / 0.0015);
  // Glass of some millimetres cools in minutes.
  const wallJPerK = lossWPerK * between(random, 200, 600);
  const frothMargin = habit === 'steady' ? between(random, 1.6, 3) : between(random, 1, 1.35);
  const cycles = random.integer(10, 60);

  const still: StillSetup = {
    pressureKPa,
    pressureDriftKPaPerH: 0.1 * random.normal(),
    roomC,
    pot: {
      charge: {
        ethanolMol: sumMol * x,
        waterMol: sumMol * (1 - x),
        lightMol: charge === 'denatured' ? (ethanolMl / 74) * between(random, 0.015, 0.06) : 0,
      },
      glassJPerK: 60 * (chargeMl / 350) ** 0.67 + 30,
      lossWPerK: potLossWPerK,
      heaterS: habit === 'mantle' ? between(random, 60, 180) : between(random, 4, 25),
      bumpK: random.uniform() < 0.5 ? 0 : between(random, 0, 0.5),
    },
    column: {
      slices: 12,
      transferUnits: isWeak ? between(random, 0.3, 1.3) : spread(random, 2.5, 12),
      clingingMol: spread(random, 0.08, 0.3) * size,
      drainS: between(random, 0.4, 2.5),
      wallJPerK,
      filmWPerK: wallJPerK / between(random, 4, 12),
      lossWPerK,
      usualMolPerS,
    },
    bulb: {
      lag: drawLag(random, habit === 'steady' ? 12 : 18),
      tooHighCm:
        hanging === 'right'
          ? 0
          : hanging === 'high'
            ? between(random, 0.3, 2.5)
            : between(random, -2, -0.3),
      sharePerCm: between(random, 0.15, 0.28),
      deadSpaceK: between(random, 3, 8),
      deadSpaceS: between(random, 25, 90),
      splashPerCm: between(random, 0.01, 0.05),
      drySlowness: between(random, 1.5, 4),
    },
    usualDistillateMolPerS,
    froth: {
      molPerS: usualMolPerS * frothMargin,
      risesS: between(random, 12, 60),
      surgesPerS: habit === 'steady' ? 0 : spread(random, 1 / 800, 1 / 120),
    },
    person: {
      habit,
      fullW: Math.max(workingW * 1.05, Math.min(warmingW, workingW * between(random, 1.25, 2))),
      workingW,
      reactionS: between(random, 1, 8),
      tooFastK: random.uniform() < 0.5 ? between(random, 4, 12) : null,
      tooHotC: random.uniform() < 0.4 ? between(random, 79, 88) : null,
      awayS: [between(random, 15, 35), between(random, 50, 120)],
      mostCycles: cycles,
      weakForS: between(random, 120, 400),
    },
    leastStrengthAbv,
  };
  return { still, toldMl, toldAbv };
}

function drawLag(random: Random, slowestS: number): TwoLags {
  const fastShare = between(random, 0.66, 0.8);
  return twoLags(fastShare, spread(random, 3, slowestS), between(random, 2.6, 4.6));
}

function drawProbe(random: Random): HeadProbe {
  const kind = weighted<'one-wire' | 'thermocouple' | 'fine'>(random, {
    'one-wire': 0.5,
    thermocouple: 0.2,
    fine: 0.3,
  });
  const shared = {
    offsetK: random.uniform() < 0.7 ? 0.3 * random.normal() : between(random, -1, 1),
    wanderK: between(random, 0.005, 0.04),
    everyS: random.uniform() < 0.8 ? 1 : random.integer(2, 5),
  };
  if (kind === 'one-wire') {
    const noiseK = between(random, 0.022, 0.045);
    return { ...shared, noiseK, slowShare: 0.5, slowS: 4, quantumK: 0.0625, burstsPerH: 0 };
  }
  if (kind === 'thermocouple') {
    const noiseK = between(random, 0.15, 0.25);
    const burstsPerH = between(random, 0, 6);
    return { ...shared, noiseK, slowShare: 0.9, slowS: 3, quantumK: 0.25, burstsPerH };
  }
  const noiseK = between(random, 0.013, 0.03);
  return { ...shared, noiseK, slowShare: 0.5, slowS: 3, quantumK: 0.01, burstsPerH: 0 };
}

/** What Prepare makes of an entry, of none (the altitude stays 0), or of a wrong one. */
function drawPressure(
  random: Random,
  knowledge: PressureKnowledge,
  pressureKPa: number,
  altitudeM: number,
): RunSettings['pressure'] {
  if (knowledge === 'unknown') return defaultRunSettings.pressure;
  if (knowledge === 'altitude') {
    const toldM = Math.round(altitudeM + 15 * random.normal());
    const told = stationPressure({ kind: 'altitude', altitudeM: toldM });
    return {
      pressureKPa: told.pressureKPa,
      standardUncertaintyKPa: told.standardUncertaintyKPa,
      source: 'altitude',
      altitudeM: toldM,
    };
  }
  const wrongKPa =
    knowledge === 'wrong'
      ? (random.uniform() < 0.5 ? -1 : 1) * between(random, 0.5, 3)
      : 0.1 * random.normal();
  const stationPressureKPa = Math.round(10 * (pressureKPa + wrongKPa)) / 10;
  const told = stationPressure({ kind: 'barometer', stationPressureKPa });
  return {
    pressureKPa: told.pressureKPa,
    standardUncertaintyKPa: told.standardUncertaintyKPa,
    source: knowledge === 'channel' ? 'channel' : 'barometer',
    altitudeM: null,
  };
}

function tagsOf(run: {
  readonly habit: Habit;
  readonly charge: Charge;
  readonly knowledge: PressureKnowledge;
  readonly hanging: Hanging;
  readonly changesProbe: boolean;
}): readonly Tag[] {
  const { habit, charge, knowledge, hanging, changesProbe } = run;
  const pressure = knowledge === 'unknown' || knowledge === 'wrong' ? knowledge : 'right';
  return [
    habit === 'flame' ? 'by hand' : habit,
    charge,
    `pressure ${pressure}`,
    `bulb ${hanging}`,
    ...(changesProbe ? (['probe change'] as const) : []),
  ];
}

function between(random: Random, low: number, high: number): number {
  return low + (high - low) * random.uniform();
}

function spread(random: Random, low: number, high: number): number {
  return Math.exp(between(random, Math.log(low), Math.log(high)));
}

function weighted<Name extends string>(
  random: Random,
  weights: Readonly<Record<Name, number>>,
): Name {
  const names = Object.keys(weights) as Name[];
  let left = names.reduce((sum, name) => sum + weights[name], 0) * random.uniform();
  for (const name of names) {
    left -= weights[name];
    if (left < 0) return name;
  }
  return names[names.length - 1] as Name;
}
