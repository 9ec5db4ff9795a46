import type { Random } from '../../shared-core/random/index.ts';
import { boil, coldPot, type PotSetup, scoop, takeBack } from './boiling-pot.ts';
import { type BulbSetup, bulbTemperature, coldBulb, feel } from './hung-bulb.ts';
import {
  type ColumnSetup,
  dewPoint,
  drain,
  emptyColumn,
  type PackedColumn,
  riseThrough,
  throwUp,
} from './packed-column.ts';
import { type HeatAct, newPerson, type PersonSetup, stopHeating, watch } from './person.ts';
import { lookUp, mixtureTables, molarVolumeOf, strengthOf } from './wilson-mixture.ts';

export interface StillSetup {
  readonly pressureKPa: number;
  /** Drift of the air pressure [kPa/h]. */
  readonly pressureDriftKPaPerH: number;
  readonly roomC: number;
  readonly pot: PotSetup;
  readonly column: ColumnSetup;
  readonly bulb: BulbSetup;
  /** Distillate at the usual heat [mol/s]. */
  readonly usualDistillateMolPerS: number;
  readonly froth: FrothSetup;
  readonly person: PersonSetup;
  readonly leastStrengthAbv: number;
}

/** How the boil froths: at which flow, how fast, and how often it surges by itself [1/s]. */
export interface FrothSetup {
  readonly molPerS: number;
  readonly risesS: number;
  readonly surgesPerS: number;
}

/** What happened, second by second from 0. */
export interface StillCourse {
  readonly bathed: number[];
  readonly bulbC: number[];
  /** What the bulb feels, and how much slower it follows for want of vapour. */
  readonly feltC: number[];
  readonly slowness: number[];
  readonly vapourC: number[];
  readonly abv: number[];
  readonly distilledMl: number[];
  readonly aboveLimitMl: number[];
  readonly potC: number[];
  readonly potMl: number[];
  /** Vapour past the head, as a share of the usual. */
  readonly flow: number[];
  /** 1 while the heat is on. */
  readonly heated: number[];
  readonly acts: readonly HeatAct[];
  readonly heatOffS: number;
  readonly chargedMl: number;
  readonly chargedEthanolMl: number;
  readonly azeotropeC: number;
  /** Ethanol in pot, column and receiver at the end less that charged, as a share of it; 0 for water. */
  readonly ethanolGainShare: number;
}

const stepS = 0.25;
const stepsASecond = 4;
const longestS = 4 * 3600;
const coolDownS = 900;
const frothFallsS = 6;
/** Vigorous froth throws this share of the pot's liquid up in a second. */
const thrownPerS = 0.003;
/** The heat comes off when the pot is nearly empty, or the vapour is not worth collecting, well past any limit. */
const dryShareOfCharge = 0.12;
const notWorthAbv = 45;

/** Runs a still from cold until some minutes after its heat was taken off. */
export function runStill(setup: StillSetup, random: Random): StillCourse {
  const { roomC, froth: frothSetup, leastStrengthAbv } = setup;
  const tables = mixtureTables(setup.pressureKPa);
  const pot = coldPot(setup.pot, roomC);
  const column = emptyColumn(setup.column, roomC);
  const bulb = coldBulb(setup.bulb, roomC);
  const person = newPerson(setup.person, random.fork('person'));
  const surges = random.fork('surges');
  const splashes = random.fork('splashes');
  const course = emptyCourse();
  const chargedEthanolMol = setup.pot.charge.ethanolMol;
  const chargedMl = potVolume(setup.pot.charge);
  let receivedEthanolMol = 0;
  let distilledMl = 0;
  let aboveLimitMl = 0;
  let froth = 0;
  let weakS = 0;
  let arrived = false;
  let heatOffS = longestS;
  let headEthanol = 0;
  let headLight = 0;
  let headMolPerS = 0;

  for (let timeS = 0; timeS <= Math.min(longestS, heatOffS + coolDownS); timeS += 1) {
    const driftK = (tables.kelvinPerKPa * setup.pressureDriftKPaPerH * timeS) / 3600;
    if (surges.uniform() < frothSetup.surgesPerS && pot.stillS === 0) froth += 0.7;
    for (let step = 0; step < stepsASecond; step += 1) {
      const vapour = boil(pot, tables, person.wantedW, roomC, stepS);
      const wanted = (vapour.mol / stepS / frothSetup.molPerS) ** 1.5;
      froth += ((wanted - froth) * stepS) / (wanted > froth ? frothSetup.risesS : frothFallsS);
      if (froth > 1) {
        const thrown = scoop(pot, Math.min(0.01, thrownPerS * (froth - 1) * stepS));
        throwUp(column, thrown, 0.5 * froth);
      }
      riseThrough(column, tables, vapour, roomC, stepS);
      takeBack(pot, drain(column, stepS), column.wallC[0] as number);
      headMolPerS += (vapour.mol / stepS - headMolPerS) * 0.25;
      if (vapour.mol > 0) {
        headEthanol = vapour.ethanol;
        headLight = vapour.light;
        receivedEthanolMol += vapour.mol * vapour.ethanol;
        const fraction = headEthanol / (1 - headLight);
        const ml = vapour.mol * molarVolumeOf(fraction);
        distilledMl += ml;
        if (strengthOf(fraction) >= leastStrengthAbv) aboveLimitMl += ml;
      }
      feel(
        bulb,
        {
          flow: headMolPerS / setup.usualDistillateMolPerS,
          vapourC: arrived || vapour.mol > 0 ? dewPoint(tables, headEthanol, headLight) : roomC,
          wallC: column.wallC[setup.column.slices - 1] as number,
          roomC,
          belowK: belowHead(column, tables),
          chance: setup.bulb.tooHighCm < 0 ? splashes.normal() : 0,
        },
        stepS,
      );
    }
    arrived ||= bulb.bathed > 0.5;
    const abv = arrived ? strengthOf(headEthanol / (1 - headLight)) : 0;
    const bulbC = bulbTemperature(setup.bulb.lag, bulb.core) + bulb.bathed * driftK;
    course.bathed.push(rounded(bulb.bathed, 1e4));
    course.bulbC.push(rounded(bulbC, 1e4));
    course.feltC.push(rounded(bulb.feltC + bulb.bathed * driftK, 1e3));
    course.slowness.push(rounded(bulb.slowness, 1e3));
    course.vapourC.push(rounded(dewPoint(tables, headEthanol, headLight) + driftK, 1e3));
    course.abv.push(rounded(abv, 1e3));
    course.distilledMl.push(rounded(distilledMl, 1e3));
    course.aboveLimitMl.push(rounded(aboveLimitMl, 1e3));
    course.potC.push(rounded(pot.temperatureC, 1e2));
    course.potMl.push(rounded(potVolume(pot.liquid), 10));
    course.flow.push(rounded(headMolPerS / setup.usualDistillateMolPerS, 1e3));
    course.heated.push(person.wantedW > 0 ? 1 : 0);
    if (timeS >= heatOffS) continue;

    if (bulb.bathed > 0.9) {
      weakS = abv < notWorthAbv ? weakS + 1 : 0;
    }
    const isDry = potVolume(pot.liquid) < dryShareOfCharge * chargedMl;
    if (weakS > setup.person.weakForS || isDry || timeS === longestS - coolDownS) {
      heatOffS = timeS;
      stopHeating(person, timeS);
      continue;
    }
    watch(person, {
      timeS,
      reading: bulbC,
      readingBefore: course.bulbC[Math.max(0, timeS - 10)] as number,
      froth,
      arrived,
      flow: headMolPerS / setup.usualDistillateMolPerS,
    });
  }
  const columnMol = column.ethanolMol.reduce((sum, mol) => sum + mol, 0);
  const endMol = pot.liquid.ethanolMol + columnMol + receivedEthanolMol;
  return {
    ...course,
    acts: person.acts,
    heatOffS,
    chargedMl,
    chargedEthanolMl: chargedEthanolMol * molarVolumeOf(1),
    azeotropeC: Math.min(...tables.boilsC),
    ethanolGainShare: chargedEthanolMol > 0 ? endMol / chargedEthanolMol - 1 : 0,
  };
}

function emptyCourse() {
  const column = (): number[] => [];
  return {
    bathed: column(),
    bulbC: column(),
    feltC: column(),
    slowness: column(),
    vapourC: column(),
    abv: column(),
    distilledMl: column(),
    aboveLimitMl: column(),
    potC: column(),
    potMl: column(),
    flow: column(),
    heated: column(),
  };
}

function potVolume(liquid: { ethanolMol: number; waterMol: number; lightMol: number }): number {
  const sum = liquid.ethanolMol + liquid.waterMol;
  return sum > 0 ? sum * molarVolumeOf(liquid.ethanolMol / sum) + 74 * liquid.lightMol : 0;
}

/** How much hotter the liquid some slices below the head boils than that in the uppermost packing. */
function belowHead(
  { ethanolMol, waterMol, setup }: PackedColumn,
  { boilsC }: { readonly boilsC: Float64Array },
): number {
  const boils = (slice: number): number => {
    const ethanol = ethanolMol[slice] as number;
    const sum = ethanol + (waterMol[slice] as number);
    return lookUp(boilsC, sum > 0 ? ethanol / sum : 0);
  };
  const upper = setup.slices - 2;
  return Math.max(0, boils(Math.max(0, upper - Math.round(setup.slices / 4))) - boils(upper));
}

function rounded(value: number, scale: number): number {
  return Math.round(value * scale) / scale;
}
