import { hexoseFromSucroseGPerG } from '../bookkeeping/index.ts';
import { requireInRange } from '../result/index.ts';
import { fruitSugars } from './fruit-sugar.ts';
import { extractGPerL } from './gravity-and-extract.ts';
import { dissolvedGasGPerL } from './mass-loss.ts';
import { fromSugar, lawfulSugarPerAbvGPerL, strengthOf } from './sugar-to-ethanol.ts';

/** Where the sugar comes from. */
export type SugarSource =
  | { readonly kind: 'hexose' | 'sucrose'; readonly massG: number }
  | { readonly kind: 'juice'; readonly gravity: number; readonly volumeMl: number }
  | {
      readonly kind: 'fruit';
      readonly fruit: (typeof fruitSugars)[number]['fruit'];
      readonly massG: number;
    };

/** A ferment that is thought of. */
export interface FermentPlanRequest {
  readonly sources: readonly SugarSource[];
  /** Everything together, filled up with water [mL] > 0. */
  readonly volumeMl: number;
  /** What the vessel holds to the brim [mL] > 0. */
  readonly vesselMl: number;
  /** Strength that the yeast bears [% vol], 5 … 20. */
  readonly yeastBearsAbv: number;
  /** Weakest charge of which the column makes a plateau [% vol]; null where the column is not known. */
  readonly leastUsefulAbv: number | null;
}

/** Two ends of what is known. */
export interface PlanRange {
  readonly low: number;
  readonly high: number;
}

export type FermentWarning =
  | 'no-sugar'
  | 'too-sweet'
  | 'too-weak'
  | 'perhaps-too-weak'
  | 'too-full'
  | 'table-too-wide';

/** What a ferment would give; every range is carried through from the sugar's. */
export interface FermentPlan {
  /** Sugar, as hexose [g]. */
  readonly sugarG: PlanRange;
  /** By the equation: no ferment gives more [% vol]. */
  readonly atMostAbv: PlanRange;
  /** As ferments in practice do, and as the law counts, whichever end is farther [% vol]; no more than the yeast bears. */
  readonly inPracticeAbv: PlanRange;
  /** Gas in all, at 25 °C [L]. */
  readonly carbonDioxideL: PlanRange;
  /** What the vessel loses on a balance before it is degassed [g]. */
  readonly massLossG: PlanRange;
  readonly headspacePercent: number;
  readonly warnings: readonly FermentWarning[];
}

/** Room that froth needs [%]; common practice, no source. */
export const frothRoomPercent = 25;
/** Extract of a juice that is no sugar, which the law's tables leave out as well [g/L]; common practice, no source. */
const juiceOtherGPerL: PlanRange = { low: 8, high: 30 };
/** Sugar above which many yeasts don't begin [g/L]; common practice, no source. */
const tooSweetGPerL = 270;
/** A table whose ends lie farther apart than this says too little. */
const widestRatio = 1.5;

/**
 * What a ferment will give: `m = Σ sugar`, then ethanol by the equation and in practice, gas and mass lost, each as a range.
 *
 * @param request sources, volumes [mL] > 0, strength the yeast bears [% vol] 5 … 20
 * @returns ranges and warnings
 * @throws OutOfRangeError outside these ranges
 *
 * Source: see {@link fromSugar}, {@link lawfulSugarPerAbvGPerL}, {@link fruitSugars}.
 * @example
 * const plan = planFerment({ sources: [{ kind: 'hexose', massG: 168.3 }], volumeMl: 1000, vesselMl: 1500, yeastBearsAbv: 14, leastUsefulAbv: null });
 * plan.atMostAbv.high // ≈ 10.91 ± 0.01
 * plan.inPracticeAbv.low // ≈ 10 ± 0.01
 */
export function planFerment(request: FermentPlanRequest): FermentPlan {
  const { sources, volumeMl, vesselMl, yeastBearsAbv, leastUsefulAbv } = request;
  requireInRange('volume', volumeMl, 1, 1e7, 'mL');
  requireInRange('vessel', vesselMl, 1, 1e7, 'mL');
  requireInRange('strength the yeast bears', yeastBearsAbv, 5, 20, '% vol');
  const parts = sources.map(sugarOf);
  const sugarG = {
    low: sum(parts.map(({ low }) => low)),
    high: sum(parts.map(({ high }) => high)),
  };
  const volumeL = volumeMl / 1000;
  const each = (of: (sugarG: number) => number): PlanRange => ({
    low: of(sugarG.low),
    high: of(sugarG.high),
  });
  const atMostAbv = each((grams) => strengthOf(fromSugar(grams, 'hexose').atMostEthanolG, volumeL));
  const practice = each((grams) =>
    strengthOf(fromSugar(grams, 'hexose').inPracticeEthanolG, volumeL),
  );
  const lawfulLow = sugarG.low / volumeL / lawfulSugarPerAbvGPerL.now;
  const gas = each((grams) => fromSugar(grams, 'hexose').carbonDioxideG);
  const inPracticeAbv = {
    low: Math.min(lawfulLow, practice.low, yeastBearsAbv),
    high: Math.min(practice.high, yeastBearsAbv),
  };
  const headspacePercent = 100 * (1 - volumeMl / vesselMl);
  const plan = {
    sugarG,
    atMostAbv,
    inPracticeAbv,
    carbonDioxideL: each((grams) => fromSugar(grams, 'hexose').carbonDioxideL),
    massLossG: {
      low: Math.max(0, 0.93 * gas.low - dissolvedGasGPerL(roomC) * volumeL),
      high: gas.high * (1 + mostCarried),
    },
    headspacePercent,
  };
  return { ...plan, warnings: warningsOf() };

  function warningsOf(): readonly FermentWarning[] {
    if (sugarG.high === 0) return ['no-sugar'];
    const isWide = parts.some(({ low, high }) => high > widestRatio * low);
    const found: readonly (FermentWarning | null)[] = [
      sugarG.high / volumeL > tooSweetGPerL || practice.high > yeastBearsAbv ? 'too-sweet' : null,
      leastUsefulAbv === null ? null : weakness(inPracticeAbv, leastUsefulAbv),
      headspacePercent < frothRoomPercent ? 'too-full' : null,
      isWide ? 'table-too-wide' : null,
    ];
    return found.filter((warning) => warning !== null);
  }
}

const roomC = 20;
/** Vapours that the gas takes along, over its mass, in a warm ferment. Source: see `waterCarriedGPerG`. */
const mostCarried = 0.03;

function weakness({ low, high }: PlanRange, least: number): FermentWarning | null {
  if (high < least) return 'too-weak';
  return low < least ? 'perhaps-too-weak' : null;
}

function sugarOf(source: SugarSource): PlanRange {
  switch (source.kind) {
    case 'hexose':
    case 'sucrose': {
      requireInRange('sugar', source.massG, 0, 1e6, 'g');
      const grams = source.massG * (source.kind === 'sucrose' ? hexoseFromSucroseGPerG : 1);
      return { low: grams, high: grams };
    }
    case 'juice': {
      requireInRange('juice', source.volumeMl, 0, 1e7, 'mL');
      const litres = source.volumeMl / 1000;
      const extract = extractGPerL(source.gravity);
      return {
        low: litres * Math.max(0, extract - juiceOtherGPerL.high),
        high: litres * Math.max(0, extract - juiceOtherGPerL.low),
      };
    }
    case 'fruit': {
      requireInRange('fruit', source.massG, 0, 1e7, 'g');
      const known = fruitSugars.find(({ fruit }) => fruit === source.fruit);
      const { lowPercent = 0, highPercent = 0 } = known ?? {};
      return {
        low: (source.massG * lowPercent) / 100,
        high: (source.massG * highPercent) / 100,
      };
    }
  }
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/**
 * Sugar to weigh for a wanted strength, `m = q V 16.83 g/L`, less what is in there already; table sugar weighs a twentieth less.
 *
 * @param wantedAbv strength [% vol], 0 … 20
 * @param volumeMl finished liquid [mL] > 0
 * @param alreadyG sugar that is in it, as hexose [g] ≥ 0
 * @param kind sugar that is weighed
 * @returns sugar [g], not less than zero; in practice it gives up to 3 % more than wanted
 * @throws OutOfRangeError outside these ranges
 *
 * Source: French order of 14 September 2011, annex IV: 16.83 g/L for each % vol.
 * @example
 * sugarToWeighG(10, 1000, 0, 'hexose') // ≈ 168.3 ± 0.01
 */
export function sugarToWeighG(
  wantedAbv: number,
  volumeMl: number,
  alreadyG: number,
  kind: 'hexose' | 'sucrose',
): number {
  requireInRange('strength', wantedAbv, 0, 20, '% vol');
  requireInRange('volume', volumeMl, 1, 1e7, 'mL');
  requireInRange('sugar that is in it', alreadyG, 0, 1e7, 'g');
  const hexoseG = Math.max(
    0,
    (wantedAbv * lawfulSugarPerAbvGPerL.now * volumeMl) / 1000 - alreadyG,
  );
  return kind === 'sucrose' ? hexoseG / hexoseFromSucroseGPerG : hexoseG;
}
