import {
  collectedCourse,
  headVapourTable,
  indexAtTime,
  pointAt,
  type Series,
  strengthFromMoleFraction,
} from '#shared-core';
import type { Film } from '../look-back/film.ts';
import type { RunCourse } from './score-guess.ts';

/** Readings this near to a time speak for it [s]. */
const reachS = 10;
const unbathedK = 0.5;

/**
 * A recorded run as a course to score guesses on. Strengths are what the run strip shows once it is revealed: the probe is
 * believed to read as much too high as the monitor had learned by the end, so a guess on the limit has the limit's strength.
 */
export function courseOfFilm(film: Film): RunCourse {
  const last = film.frames[film.frames.length - 1];
  const head = last?.tracks.head?.series ?? null;
  const { pressure } = film.settings;
  const plateau = last?.snapshot?.plateau;
  const pressureKPa = plateau?.pressureKPa ?? pressure.pressureKPa;
  const readsHighK = plateau?.probeReadsHighK ?? 0;
  const table = headVapourTable(pressureKPa);
  const spans = film.verdicts.stages;
  const arrivedS = spans.find(({ stage }) => stage === 'first-fraction')?.fromS ?? null;
  const coolingS = spans.find(({ stage }) => stage === 'cool-down')?.fromS ?? film.endS;
  const headAtC = (timeS: number) => {
    return head === null ? null : meanNear(head, timeS);
  };
  return {
    headAtC,
    strengthAtAbv: (timeS) => {
      if (arrivedS === null || timeS < arrivedS || timeS > coolingS) return null;
      const shownC = headAtC(timeS);
      if (shownC === null) return null;
      const vapourC = shownC - readsHighK;
      // Clearly colder than the azeotrope, the bulb is not bathed in ethanol–water vapour.
      if (vapourC > 150 || vapourC < table.azeotropeTemperatureC - unbathedK) return null;
      return strengthFromMoleFraction(table.ethanolMoleFractionAt(vapourC));
    },
    bookings: collectedCourse(last?.marks ?? [], arrivedS),
  };
}

function meanNear(series: Series, timeS: number): number | null {
  const from = indexAtTime(series, timeS - reachS);
  const to = indexAtTime(series, timeS + reachS);
  let sum = 0;
  for (let index = from; index < to; index++) sum += pointAt(series, index)?.value ?? 0;
  return to > from ? sum / (to - from) : null;
}
