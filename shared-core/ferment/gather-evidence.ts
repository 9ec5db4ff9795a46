import { median } from '../uncertainty/index.ts';
import type { FermentReading } from './ferment-log.ts';
import { scaleResolution } from './scale-resolution.ts';

/** A number with its standard uncertainty. */
export interface Measured {
  readonly value: number;
  readonly uncertainty: number;
}

/** What the readings of one moment, or of one stretch of a dense log, say. */
export interface Evidence {
  readonly timeH: number;
  readonly gravity: Measured | null;
  readonly massG: Measured | null;
  readonly bubblesPerMin: number | null;
  readonly temperatureC: number | null;
  readonly isDegassed: boolean;
}

/** Readings closer than this are one piece of evidence: what they err by, they mostly share [h]. */
const stretchH = 3;
/** Least standard uncertainty of a gravity, clinging bubbles and the eye included; common practice, no source. */
const leastGravityUncertainty = 0.0008;
/** Least standard uncertainty of a mass, draughts and a balance's wandering included [g]; common practice, no source. */
const leastMassUncertaintyG = 0.4;

/**
 * Readings in time order as evidence: those of three hours are one piece, the median of each kind, with an uncertainty of
 * `u² = q²/12 + s²` by the step q of the scale and a least scatter s.
 *
 * Source: JCGM 100, F.2.2.1; least scatters: common practice, no source.
 * @example
 * const at = (timeH, massG) => ({ timeH, gravity: null, massG, temperatureC: null, bubblesPerMin: null, isDegassed: false });
 * gatherEvidence([at(0, 1500), at(1, 1499), at(2, 1498), at(3, 1497)]).length // => 2
 */
export function gatherEvidence(readings: readonly FermentReading[]): readonly Evidence[] {
  const of = <K extends 'gravity' | 'massG'>(key: K) =>
    readings.map((reading) => reading[key]).filter((value) => value !== null);
  const gravityStep = scaleResolution(of('gravity'), 'gravity');
  const massStep = scaleResolution(of('massG'), 'mass');
  const gravityUncertainty = Math.hypot(
    gravityStep / Math.sqrt(12),
    Math.max(leastGravityUncertainty, gravityStep / 4),
  );
  const massUncertainty = Math.hypot(
    massStep / Math.sqrt(12),
    Math.max(leastMassUncertaintyG, massStep / 2),
  );
  return stretches(readings).map((stretch) => ({
    timeH: median(stretch.map(({ timeH }) => timeH)) ?? 0,
    gravity: measured(
      stretch.map(({ gravity }) => gravity),
      gravityUncertainty,
    ),
    massG: measured(
      stretch.map(({ massG }) => massG),
      massUncertainty,
    ),
    bubblesPerMin: middle(stretch.map(({ bubblesPerMin }) => bubblesPerMin)),
    temperatureC: middle(stretch.map(({ temperatureC }) => temperatureC)),
    isDegassed: stretch.some(({ isDegassed }) => isDegassed),
  }));
}

function stretches(readings: readonly FermentReading[]): readonly (readonly FermentReading[])[] {
  const found: FermentReading[][] = [];
  for (const reading of readings) {
    const open = found.at(-1);
    const from = open?.[0]?.timeH;
    if (open !== undefined && from !== undefined && reading.timeH < from + stretchH) {
      open.push(reading);
    } else found.push([reading]);
  }
  return found;
}

function measured(values: readonly (number | null)[], uncertainty: number): Measured | null {
  const value = middle(values);
  return value === null ? null : { value, uncertainty };
}

/** Of what was read; null where nothing was. */
function middle(values: readonly (number | null)[]): number | null {
  return median(values.filter((value) => value !== null));
}
