import { limitTemperatureC } from '../equilibrium/index.ts';
import { heatOffForGoodS, standingMarks } from '../run/index.ts';
import type { RunStudy } from '../study/index.ts';

/** A time that can be read off a curve, and how far off an eye may be. */
export interface ReadTime {
  readonly timeS: number;
  readonly toleranceS: number;
}

/** Share of the width of a plot within which an eye reads a time. */
const eyeShare = 1 / 40;
/** A time that is doubtful by more of the run than this is not asked for. */
const vagueShare = 1 / 8;
/** What lasts less than this cannot be seen [s]. */
const seenS = 120;
/** The temperature that tells vapour at the bulb from a bulb in air [°C]: a line of every plot. */
export const vapourC = 60;

/** When the head first passes 60 °C and stays above it. */
export function vapourArrives({ rows, endS }: RunStudy): ReadTime | null {
  const index = rows.findIndex(
    ({ timeS, headC }, at) =>
      headC >= vapourC &&
      rows
        .slice(at, at + 2 * seenS)
        .every((later) => later.headC >= vapourC || later.timeS > timeS + seenS),
  );
  const [before, found] = [rows[index - 1], rows[index]];
  // A table that begins with vapour at the bulb does not show it arrive.
  if (before === undefined || found === undefined || before.headC >= vapourC) return null;
  return { timeS: found.timeS, toleranceS: eyeShare * endS };
}

/** The limit of this run as it is printed [°C]. */
export function shownLimitC({ plateau, settings }: RunStudy): number | null {
  if (plateau === null) return null;
  const { pressureKPa } = plateau;
  const { leastStrengthAbv } = settings;
  return Number(limitTemperatureC({ leastStrengthAbv, pressureKPa }).toFixed(1));
}

/** When the head passes the limit for good while heat is on; null where it does not, or too slowly to say when. */
export function leavesPlateau(study: RunStudy): ReadTime | null {
  const { plateau, rows } = study;
  const limitC = shownLimitC(study);
  if (plateau === null || limitC === null) return null;
  const untilS = heatOffAt(study) ?? lastHotS(study);
  const heated = rows.filter(
    ({ timeS }) => timeS >= plateau.statistics.span.toS && timeS <= untilS,
  );
  const lastBelow = (atC: number) => heated.findLast(({ headC }) => headC <= atC)?.timeS;
  const [fromS, timeS, toS] = [-0.5, 0, 0.5].map((offset) => lastBelow(limitC + offset));
  if (timeS === undefined || untilS - timeS < seenS) return null;
  const axisS = curveLengthS(study);
  const spreadS = (toS ?? timeS) - (fromS ?? plateau.statistics.span.toS);
  const toleranceS = Math.max(eyeShare * axisS, spreadS / 2, 30);
  return toleranceS > vagueShare * axisS ? null : { timeS, toleranceS };
}

/** The last heat-off that was not taken back by heat-on. */
export function heatOffAt({ inputs }: RunStudy): number | null {
  return heatOffForGoodS(standingMarks(inputs));
}

function lastHotS({ rows, endS }: RunStudy): number {
  return rows.findLast(({ headC }) => headC >= vapourC)?.timeS ?? endS;
}

/** Length of time that the enlarged curve shows, about. */
function curveLengthS({ plateau, endS }: RunStudy): number {
  return plateau === null ? endS : Math.max(600, endS - plateau.statistics.span.fromS);
}
