import { createRandom } from '../random/index.ts';
import { requireInRange } from '../result/index.ts';
import type { RunSettings } from '../run/index.ts';
import { createTwin, type Observation, ownWidening, widenedRange } from '../twin/index.ts';
import { type Estimate, median } from '../uncertainty/index.ts';
import { type Bench, benchOf, drawHalfRun, type HalfRun, usualHeatUp } from './half-run.ts';

/**
 * How well the end of the main fraction will be known when half of it has come over: half the width of the forecast's 90 % range [s],
 * with what is there now, and with one instrument more.
 */
export interface InstrumentGains {
  readonly asItIsS: number;
  /** Null where a heat is stated already. */
  readonly withStatedHeatS: number | null;
  readonly withBalanceS: number;
  readonly withPotProbeS: number;
}

/** What stands beside the head. */
export type Beside = 'nothing' | 'stated-heat' | 'balance' | 'pot-probe';

/** Runs without a main fraction say nothing of its end: so many are tried for each that counts. */
const mostTries = 4;

/**
 * What each instrument would narrow, before anything is measured (preposterior analysis): stills are drawn from what is believed of this
 * one, each is watched to half of its main fraction, and the twin that forecasts live is shown the head alone and with each instrument.
 * Each figure is the median over the stills of half the 90 % range: `Δt = median((t_high − t_low)/2)`.
 *
 * @param settings charge, rig, air, probe and limit as they stand in Prepare
 * @param stills how many are drawn [number], 4 … 400
 * @returns half widths [s]; null where most stills would give no main fraction
 * @throws OutOfRangeError for fewer or more stills
 *
 * Source: H. Raiffa, R. Schlaifer, Applied Statistical Decision Theory (1961), preposterior analysis; from memory.
 * The forecast: `createTwin`, as live.
 * @example
 * const pressure = { ...defaultRunSettings.pressure, standardUncertaintyKPa: 0.3 };
 * const gains = instrumentGains({ ...defaultRunSettings, pressure }, 6);
 * gains !== null && gains.withBalanceS < gains.asItIsS // => true
 */
export function instrumentGains(settings: RunSettings, stills: number): InstrumentGains | null {
  requireInRange('stills drawn', stills, 4, 400, '');
  const bench = benchOf(settings);
  const random = createRandom('instruments');
  const halves: HalfRun[] = [];
  for (let tried = 0; tried < mostTries * stills && halves.length < stills; tried += 1) {
    const half = drawHalfRun(bench, random);
    if (half !== null) halves.push(half);
  }
  if (halves.length < stills) return null;
  const over = (beside: Beside): number =>
    median(
      halves.map((half) => {
        const { low, high } = forecastHalfWay(half, beside, bench);
        return (high - low) / 2;
      }),
    ) ?? Number.NaN;
  return {
    asItIsS: over('nothing'),
    withStatedHeatS: settings.rig.heatW === null ? over('stated-heat') : null,
    withBalanceS: over('balance'),
    withPotProbeS: over('pot-probe'),
  };
}

/** Half-way, a head that has done what was expected makes ranges narrower by so much; the median of two kinds of still, by simulation. */
const heldHead = 0.92;

/**
 * What the twin expects to be left of a run half-way, with an instrument beside the head: the 5, 50 and 95 % points of the posterior
 * `p(still | read) ∝ p(read | still) p(still)`, as wide as they are told where all is as expected.
 *
 * @param half what is read of a drawn still, of 900 s … 6 h of boiling
 * @param beside what stands beside the head
 * @param bench the bench the still was drawn for
 * @returns boiling time until the limit, 90 % range [s]
 *
 * Source: `createTwin`, as live.
 * @example
 * const bench = benchOf(defaultRunSettings);
 * const half = drawHalfRun(bench, createRandom('a still of 3'));
 * half === null || forecastHalfWay(half, 'balance', bench).value > 0 // => true
 */
export function forecastHalfWay(
  half: HalfRun,
  beside: Beside,
  { settings, limitHeightK, offsetSdK }: Bench,
): Estimate {
  const heatW = beside === 'stated-heat' ? half.statedHeatW : settings.rig.heatW;
  const known = { ...settings, rig: { ...settings.rig, heatW } };
  const twin = createTwin(known, usualHeatUp, offsetSdK, limitHeightK);
  for (const observation of inOrder(half, beside)) twin.see(observation);
  twin.update(Number.POSITIVE_INFINITY);
  const { limitInS } = twin.outlook(half.boiledS, limitHeightK, null);
  return widenedRange(limitInS, heldHead * ownWidening);
}

function inOrder({ head, receiver, pot }: HalfRun, beside: Beside): readonly Observation[] {
  const more = beside === 'balance' ? receiver : beside === 'pot-probe' ? pot : [];
  return [...head, ...more].toSorted((a, b) => a.boiledS - b.boiledS);
}
