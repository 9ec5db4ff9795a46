import type { Random } from '../random/index.ts';
import type { RunSettings } from '../run/index.ts';
import { enthalpyOfVaporizationJPerMol } from '../thermo/index.ts';

/** One guess of everything about the still that the bench does not tell. */
export interface StillGuess {
  readonly plates: number;
  /** Reflux ratio when vapour first comes over. */
  readonly refluxRatio: number;
  /**
   * Share of the reflux that the column's wall condenses, which grows as the column gets hotter; the rest is led back.
   */
  readonly lossShare: number;
  /** Vapour that rises in the column [mol/s]. */
  readonly vapourMolPerS: number;
  readonly strengthAbv: number;
  /** Liquid held by each plate [mol]. */
  readonly holdUpMol: number;
  /** Reading less truth, pressure error included [K]. */
  readonly biasK: number;
}

/** A guess as plain numbers on scales on which steps of a walk make sense. */
export type Walk = readonly number[];

const walkSize = 7;

/** What is believed before the head is seen: mean and standard deviation on each walking scale. */
export interface GuessPrior {
  readonly mean: Walk;
  readonly sd: Walk;
  /** Vapour at the heat of the heat-up [mol/s]; null where it was eased before, or its start was not seen. */
  readonly heatUpMolPerS: number | null;
}

/** Heat to bring charge, flask and column to the boil [J per mL of charge]: 4.1 J/(mL K) over 72 K, glass and losses. */
const heatUpJPerMl = 4.1 * 72 * 1.3;
/** Heat a warm flask loses [W]; order of magnitude from memory. */
const flaskLossW = 12;
/** Of the vapour between pot and head [J/mol], half of it ethanol and half water: the two differ by 7 %. */
const latentJPerMol =
  (enthalpyOfVaporizationJPerMol('ethanol', 85) + enthalpyOfVaporizationJPerMol('water', 85)) / 2;

/**
 * Liquid on one plate of a column over a usual charge [mol], and the spread of its logarithm; larger stills have wider columns. Hardly any
 * in a Vigreux column, a tenth of the packed volume or more on beads and rings, at 20 … 45 mL/mol.
 *
 * Source: test/reference/column_typicals.csv, hold-up of a packed column; from memory.
 */
const heldMolPerPlate = 0.021;
const heldLogSd = 0.8;
const usualChargeMl = 375;
const heldGrowth = 0.8;

/** A still head without a column: its wall alone enriches and leads back a little. From memory. */
const bareHead = { plates: 0.2, refluxRatio: 0.3 };

/**
 * What a stated heat leaves open: the losses between heater and column, reflux that must be warmed again, and how well it was stated. By
 * simulation: stated within 5 %, the vapour of 72 stills lay 6 % below what follows from it, ± 7 %.
 */
const statedHeatLogMean = -0.06;
export const statedHeatLogSd = 0.08;

/** What is known of the heat between switching on and the first vapour. */
export interface HeatUp {
  /** Time from heat on to vapour at the head [s]; null when the start was not seen. */
  readonly tookS: number | null;
  /** Whether it was eased meanwhile; null when nobody marked the heat. */
  readonly eased: boolean | null;
}

/**
 * No teaching heater brings a charge to the boil within four minutes: where vapour came so soon after the first mark, the heat had long
 * been on. A charge whose start was not seen is taken to have needed a usual time; common practice, no source [s].
 */
const leastHeatUpS = 240;
const usualHeatUpS = 1200;

/** Time the charge took to boil [s]; null where its start was not seen. */
function seenHeatUpS({ tookS }: HeatUp): number | null {
  return tookS === null || tookS < leastHeatUpS ? null : tookS;
}

/** Logarithm of boiling over heating-up power, and its spread: heat is often eased at the boil, seldom raised. */
function easing(heatUp: HeatUp): { readonly mean: number; readonly sd: number } {
  const { eased } = heatUp;
  if (seenHeatUpS(heatUp) === null) return { mean: -0.4, sd: 0.6 };
  if (eased === null) return { mean: -0.4, sd: 0.34 };
  // Who marked that the heat is on may still have eased it without a mark, having both hands full.
  return eased ? { mean: -0.38, sd: 0.3 } : { mean: -0.25, sd: 0.38 };
}

/**
 * The prior. Power follows from the time the charge took to come to the boil, `P = m c ΔT/t`, unless it is
 * known; spreads are those of teaching glassware (order of magnitude, from memory).
 */
export function guessPrior(settings: RunSettings, heatUp: HeatUp, biasSdK: number): GuessPrior {
  const { rig, charge } = settings;
  const tookS = seenHeatUpS(heatUp);
  const fromHeatUpW = (charge.volumeMl * heatUpJPerMl) / (tookS ?? usualHeatUpS);
  const vapour = vapourMolPerS(rig.heatW ?? fromHeatUpW);
  const ease =
    rig.heatW === null ? easing(heatUp) : { mean: statedHeatLogMean, sd: statedHeatLogSd };
  const plates = Math.max(bareHead.plates, rig.plates ?? 4.8);
  const refluxRatio = rig.plates === 0 ? bareHead.refluxRatio : 2.2;
  return {
    mean: [
      Math.log(plates),
      Math.log(refluxRatio),
      -0.3,
      Math.log(vapour) + ease.mean,
      charge.strengthAbv,
      Math.log(heldMolPerPlate) + heldGrowth * Math.log(charge.volumeMl / usualChargeMl),
      0,
    ],
    sd: [
      rig.plates === null ? 0.5 : 0.35,
      0.45,
      1.3,
      ease.sd,
      Math.max(0.2, charge.standardUncertaintyAbv),
      heldLogSd,
      biasSdK,
    ],
    heatUpMolPerS: tookS === null || heatUp.eased === true ? null : vapourMolPerS(fromHeatUpW),
  };
}

/** Vapour that so much heat [W] drives up the column [mol/s]. */
function vapourMolPerS(heatW: number): number {
  return Math.max(15, heatW - flaskLossW) / latentJPerMol;
}

/** Heat [W] that a person would state who knew that so much vapour rises. */
export function statedHeatW(vapourMolPerS: number): number {
  return vapourMolPerS * Math.exp(-statedHeatLogMean) * latentJPerMol + flaskLossW;
}

/** Turns walking scales into a guess; every value lands in its physical range. */
export function toGuess(walk: Walk): StillGuess {
  const [plates = 0, reflux = 0, share = 0, vapour = 0, strength = 0, holdUp = 0, bias = 0] = walk;
  return {
    plates: Math.min(11.9, Math.exp(plates)),
    refluxRatio: Math.exp(reflux),
    lossShare: 1 / (1 + Math.exp(-share)),
    vapourMolPerS: Math.exp(vapour),
    strengthAbv: Math.min(60, Math.max(0.5, strength)),
    holdUpMol: Math.exp(holdUp),
    biasK: bias,
  };
}

/** One guess drawn from the prior, on the walking scales. */
export function drawWalk(prior: GuessPrior, random: Random): Walk {
  return prior.mean.map((mean, index) => mean + (prior.sd[index] as number) * random.normal());
}

/** Logarithm of the prior density, up to a constant. */
export function logPrior(prior: GuessPrior, walk: Walk): number {
  let sum = 0;
  for (let index = 0; index < walkSize; index += 1) {
    const z =
      ((walk[index] as number) - (prior.mean[index] as number)) / (prior.sd[index] as number);
    sum -= (z * z) / 2;
  }
  return sum;
}
