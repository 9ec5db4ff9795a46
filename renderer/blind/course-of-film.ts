import {
  collectedCourse,
  headVapourTable,
  heatOffForGoodS,
  indexAtTime,
  pointAt,
  type Series,
  strengthFromMoleFraction,
} from '#shared-core';
import { type Film, frameIndexAt } from '../replay/index.ts';
import { benchMarks } from '../stores/index.ts';
import type { RunCourse } from './score-guess.ts';

/** Readings this near to a time speak for it [s]. */
const reachS = 10;

/**
 * A recorded run as a course to score guesses on. Strengths are what the run strip shows once it is revealed: the probe is
 * believed to read as much too high as the monitor had learned by the end, so a guess on the limit has the limit's strength.
 * There is none where the window tells none: before the head has settled, or while it cools.
 */
export function courseOfFilm(film: Film): RunCourse {
  const last = film.frames[film.frames.length - 1];
  const head = last?.tracks.head?.series ?? null;
  const { pressure } = film.settings;
  const plateau = last?.snapshot?.plateau;
  const table = headVapourTable(plateau?.pressureKPa ?? pressure.pressureKPa);
  const readsHighK = plateau?.probeReadsHighK ?? 0;
  const arrivedS =
    film.verdicts.stages.find(({ stage }) => stage === 'first-fraction')?.fromS ?? null;
  const headAtC = (timeS: number) => (head === null ? null : meanNear(head, timeS));
  return {
    headAtC,
    strengthAtAbv: (timeS) => {
      const shown = film.frames[frameIndexAt(film, timeS)]?.snapshot?.vapour?.alcoholByVolume;
      const headC = headAtC(timeS);
      if (!shown || headC === null) return null;
      const vapourC = Math.min(150, Math.max(-50, headC - readsHighK));
      return strengthFromMoleFraction(table.ethanolMoleFractionAt(vapourC));
    },
    bookings: collectedCourse(last?.marks ?? [], arrivedS),
    heatOffS:
      heatOffForGoodS(benchMarks(last?.marks ?? [])) ??
      film.verdicts.stages.find(({ stage }) => stage === 'cool-down')?.fromS ??
      null,
  };
}

function meanNear(series: Series, timeS: number): number | null {
  const from = indexAtTime(series, timeS - reachS);
  const to = indexAtTime(series, timeS + reachS);
  let sum = 0;
  for (let index = from; index < to; index++) sum += pointAt(series, index)?.value ?? 0;
  return to > from ? sum / (to - from) : null;
}
