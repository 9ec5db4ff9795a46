import type { CautionId } from '../../cautions/index.ts';
import { headVapourTable } from '../../equilibrium/index.ts';
import { correctionAtPlateauK, scaleDoubts } from '../../probe/index.ts';
import type { RunSettings } from '../../run/index.ts';
import { normalCumulative, nothingBeyondSds } from './normal.ts';
import type { VapourScale } from './vapour-scale.ts';

/** How far the probe's scale and the assumed pressure are believed to be off together: reading − truth [K]. */
export interface ScaleBelief {
  readonly meanK: number;
  readonly sdK: number;
  /** Offsets that are not ruled out, in rising order, and what each is believed. */
  readonly offsetsK: readonly number[];
  readonly weights: readonly number[];
}

/** What the run itself has shown of the offset. */
export interface ScaleEvidence {
  /** Lowest level the vapour held, on the probe's scale [°C]. */
  readonly lowestC: number;
  readonly lowestSdK: number;
  /** The same without the first minutes, in which lighter volatiles may have come; null before that is over. */
  readonly lowestLaterC: number | null;
}

/** The grid of offsets: as fine as a scale is ever known, from a bulb that hangs high in a room 2000 m up to a barometer that shows 25 kPa too little [K]. */
const stepK = 0.1;
const lowestOffsetK = -12;
const offsetCount = 211;
/** What is believed less than this does not count. */
const leastWeight = 1e-4;
/** Vapour known to a few tenths that seems to lie below the azeotrope is not yet impossible [K]. */
export const toleranceK = 0.5;
/** Scatter of published data about the equilibrium model: no level, and no head, is known better on its scale [K]. */
export const modelSdK = 0.05;

/** How the bulb may hang, for all that is known of it. */
interface Bulb {
  /** Share of bulbs that hang badly, how many of these read low, and by how much on the mean [K]. */
  readonly oddShare: number;
  readonly lowShare: number;
  readonly lowMeanK: number;
}
/**
 * One bulb in six hangs badly although somebody looked, or has a pressure or calibration beside it that is wrong by more than was
 * said: it then reads low by a kelvin and a half on the mean, more often than high. Where nobody said that the bulb hangs level with
 * the side arm, nearly every other one, more of them low, and lower. By trial on simulated runs, common practice, no source.
 */
const seenBulb: Bulb = { oddShare: 0.15, lowShare: 0.65, lowMeanK: 1.5 };
const unseenBulb: Bulb = { oddShare: 0.45, lowShare: 0.75, lowMeanK: 3 };
/** By how much those read high that do, on the mean [K]. */
const oddHighMeanK = 0.6;
/**
 * Nobody entered a pressure: somewhere between sea level and 2000 m, where water boils 6.6 K lower (ISO 2533), more
 * likely low down; the weather adds some tenths of a kelvin either way.
 */
const unknownLow = { meanK: 2.5, sdK: 0.4 } as const;
/** What the air pressure is assumed to be where nobody entered one: that of the sea level (ISO 2533) [kPa]. */
const seaLevelKPa = 101.325;
/**
 * A barometer on the line that nobody has held against the height of the place: one in three lies, or shows what would be at sea level, as
 * the weather service tells it. Then the place is as high as one of which nothing is known. Chosen here.
 */
const lyingShare = 1 / 3;
/**
 * Height of the lowest level above the azeotrope: packed columns some tenths of a kelvin, bare or hurried ones some
 * kelvins; by trial on simulated runs.
 */
const heights = [
  { share: 0.7, meanK: 0.5 },
  { share: 0.3, meanK: 3 },
] as const;
/** A denatured or spoilt charge gives off lighter volatiles first, which boil below the azeotrope; chosen here. */
const lighterShare = 0.08;
/** A level that none of this explains leaves the offset as it was believed. */
const unthoughtOf = 1e-12;

/** What is believed before the run. */
export function priorScale(settings: RunSettings, scale: VapourScale): ScaleBelief {
  return scaleBeliefs(settings, scale).prior;
}

/** Standard deviation of the offset by what was stated alone [K]. */
export function statedScaleSdK(settings: RunSettings, scale: VapourScale): number {
  const { temperatureUncertaintyK } = scaleDoubts(settings);
  return Math.hypot(temperatureUncertaintyK, statedPressureSdK(settings, scale), modelSdK);
}

/** What of it the air pressure leaves open [K]. */
export function statedPressureSdK(settings: RunSettings, scale: VapourScale): number {
  return scale.kelvinPerKPa * scaleDoubts(settings).pressureUncertaintyKPa;
}

/** What is believed of the offset by what was stated, and by what the run shows beside it. */
export interface ScaleBeliefs {
  readonly prior: ScaleBelief;
  /** The offset by all that is known. */
  by(evidence: ScaleEvidence): ScaleBelief;
}

/** What was stated seldom changes in a run, and is not weighed anew for all that the run shows. */
export function scaleBeliefs(settings: RunSettings, scale: VapourScale): ScaleBeliefs {
  const weights = priorWeights(settings, scale);
  return {
    prior: summarise(weights),
    by: (evidence) => summarise(weighedBy(evidence, weights, scale)),
  };
}

/** What is believed in the run, as `scaleBeliefs` has it. */
export function believeScale(
  settings: RunSettings,
  scale: VapourScale,
  evidence: ScaleEvidence,
): ScaleBelief {
  return scaleBeliefs(settings, scale).by(evidence);
}

/**
 * No ethanol–water vapour condenses below the azeotrope, so the lowest level the vapour held lies at its own height h ≥ 0 above
 * azeotrope + offset. With the prior p(b) and the heights' p(h) the belief is p(b) · p(lowest − azeotrope − b), worked out on a grid
 * of 0.1 K.
 */
function weighedBy(
  { lowestC, lowestSdK, lowestLaterC }: ScaleEvidence,
  prior: Float64Array,
  scale: VapourScale,
): Float64Array {
  const weights = new Float64Array(offsetCount);
  for (let index = 0; index < offsetCount; index += 1) {
    const offsetK = lowestOffsetK + index * stepK;
    const lowest = heightLikelihood(lowestC - scale.azeotropeC - offsetK, lowestSdK);
    // Before the first minutes are over, a level held by lighter volatiles says nothing of the offset.
    const later =
      lowestLaterC === null
        ? 0.1
        : heightLikelihood(lowestLaterC - scale.azeotropeC - offsetK, lowestSdK);
    const likelihood = (1 - lighterShare) * lowest + lighterShare * later + unthoughtOf;
    weights[index] = (prior[index] as number) * likelihood;
  }
  return weights;
}

/**
 * How likely vapour as cool as this is at all: none condenses below the azeotrope, wherever this probe shows it.
 */
export function probabilityPossible(
  { offsetsK, weights }: ScaleBelief,
  vapourC: number,
  azeotropeC: number,
): number {
  let sum = 0;
  for (let index = 0; index < weights.length; index += 1) {
    if ((offsetsK[index] as number) > vapourC + toleranceK - azeotropeC) break;
    sum += weights[index] as number;
  }
  return sum;
}

/** Probability that vapour read at a temperature lies above a mark of the true scale. */
export function probabilityAbove(
  { offsetsK, weights }: ScaleBelief,
  temperatureC: number,
  sdK: number,
  markC: number,
): number {
  let sum = 0;
  for (let index = 0; index < weights.length; index += 1) {
    const sds = (temperatureC - (offsetsK[index] as number) - markC) / sdK;
    // All that follow lie further below: on a plateau that is nearly the whole grid.
    if (sds < -nothingBeyondSds) break;
    sum += (weights[index] as number) * normalCumulative(sds);
  }
  return sum;
}

/** The true temperature below which the vapour lies with a probability, for one read at a temperature. */
export function trueTemperatureQuantileC(
  belief: ScaleBelief,
  vapourC: number,
  sdK: number,
  probability: number,
): number {
  let lowC = vapourC - (belief.offsetsK.at(-1) ?? 0) - widestSds * sdK;
  let highC = vapourC - (belief.offsetsK[0] ?? 0) + widestSds * sdK;
  for (let halving = 0; halving < halvings; halving += 1) {
    const middleC = (lowC + highC) / 2;
    if (1 - probabilityAbove(belief, vapourC, sdK, middleC) < probability) lowC = middleC;
    else highC = middleC;
  }
  return (lowC + highC) / 2;
}

/** How far a probe as bought may be off beside another, and by how it is hung anew [K]; common practice, no source. */
const otherProbeSdK = 0.5;

/**
 * What is believed of the offset of a probe that has taken the place of the one which it was learned of: that one's calibration, which
 * every reading is still shifted by, says nothing of it.
 */
export function ofOtherProbe(
  { offsetsK, weights }: ScaleBelief,
  calibration: RunSettings['probe'],
): ScaleBelief {
  const sdK = Math.hypot(otherProbeSdK, correctionAtPlateauK(calibration));
  const all = new Float64Array(offsetCount);
  for (const [at, weight] of weights.entries()) {
    for (let index = 0; index < offsetCount; index += 1) {
      const byK = lowestOffsetK + index * stepK - (offsetsK[at] as number);
      all[index] = (all[index] as number) + weight * normalDensity(byK, sdK);
    }
  }
  return summarise(all);
}

/** Where a normal distribution has nothing left, and how often an interval is halved: to a thousandth of a kelvin. */
const widestSds = 5;
const halvings = 15;

/** What pressure and calibration leave open, and on top of that a bulb that may hang badly. */
function priorWeights(settings: RunSettings, scale: VapourScale): Float64Array {
  const bulb = wasBulbSeen(settings) ? seenBulb : unseenBulb;
  const level = levelWeights(settings, scale);
  const weights = level.map((weight) => (1 - bulb.oddShare) * weight);
  for (let steps = 1 - offsetCount; steps < offsetCount; steps += 1) {
    const odd = bulb.oddShare * oddWithin((steps - 0.5) * stepK, (steps + 0.5) * stepK, bulb);
    const last = Math.min(offsetCount, offsetCount + steps);
    for (let index = Math.max(0, steps); index < last; index += 1) {
      weights[index] = (weights[index] as number) + odd * (level[index - steps] as number);
    }
  }
  return weights;
}

/** The offset of a bulb that hangs level. */
function levelWeights(settings: RunSettings, scale: VapourScale): Float64Array {
  const { source } = settings.pressure;
  const unknownShare = source === 'assumed' ? 1 : isUnvouched(settings) ? lyingShare : 0;
  const statedSdK = statedScaleSdK(settings, scale);
  const unknownSdK = Math.hypot(settings.probe.standardUncertaintyK, unknownLow.sdK);
  const seaLevelK = headVapourTable(seaLevelKPa).azeotropeTemperatureC - scale.azeotropeC;
  return Float64Array.from({ length: offsetCount }, (_, index) => {
    const offsetK = lowestOffsetK + index * stepK;
    const stated = (1 - unknownShare) * normalDensity(offsetK, statedSdK);
    if (unknownShare === 0) return stated;
    return stated + unknownShare * loweredDensity(offsetK - seaLevelK, unknownSdK);
  });
}

function normalDensity(offsetK: number, sdK: number): number {
  return Math.exp(-0.5 * (offsetK / sdK) ** 2) / (sdK * Math.sqrt(2 * Math.PI));
}

/** Nobody has read this pressure, nor told the height of the place that bounds what a channel may fill in. */
function isUnvouched({ pressure: { source, altitudeM } }: RunSettings): boolean {
  return source === 'channel' && altitudeM === null;
}

/** One of the looks before the heat is at how the bulb hangs. */
function wasBulbSeen({ safetyConfirms }: RunSettings): boolean {
  const look: CautionId = 'bulb';
  return safetyConfirms.some(({ check }) => check === look);
}

/** Share of the bulbs that hang badly which reads off by so much or so little [K]. */
function oddWithin(fromK: number, toK: number, { lowShare, lowMeanK }: Bulb): number {
  const below = (offsetK: number): number =>
    offsetK < 0
      ? lowShare * Math.exp(offsetK / lowMeanK)
      : 1 - (1 - lowShare) * Math.exp(-offsetK / oddHighMeanK);
  return below(toK) - below(fromK);
}

/** An exponential towards the low side, blurred by a normal distribution (exponentially modified Gaussian). */
function loweredDensity(offsetK: number, sdK: number): number {
  const { meanK } = unknownLow;
  const exponent = offsetK / meanK + (sdK / meanK) ** 2 / 2;
  return (Math.exp(exponent) / meanK) * normalCumulative(-offsetK / sdK - sdK / meanK);
}

function heightLikelihood(heightK: number, sdK: number): number {
  const possible = normalCumulative(heightK / sdK);
  if (possible === 0) return 0;
  const height = Math.max(0, heightK);
  let density = 0;
  for (const { share, meanK } of heights) density += (share * Math.exp(-height / meanK)) / meanK;
  return possible * density;
}

function summarise(all: Float64Array): ScaleBelief {
  const total = all.reduce((sum, weight) => sum + weight, 0);
  const offsetsK: number[] = [];
  const weights: number[] = [];
  let kept = 0;
  for (let index = 0; index < offsetCount; index += 1) {
    const weight = (all[index] as number) / total;
    if (weight < leastWeight) continue;
    offsetsK.push(lowestOffsetK + index * stepK);
    weights.push(weight);
    kept += weight;
  }
  let meanK = 0;
  for (let index = 0; index < weights.length; index += 1) {
    weights[index] = (weights[index] as number) / kept;
    meanK += (weights[index] as number) * (offsetsK[index] as number);
  }
  let variance = stepK ** 2 / 12;
  for (let index = 0; index < weights.length; index += 1) {
    variance += (weights[index] as number) * ((offsetsK[index] as number) - meanK) ** 2;
  }
  return { meanK, sdK: Math.sqrt(variance), offsetsK, weights };
}
