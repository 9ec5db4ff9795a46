import { collectedCourse, heatOffForGoodS, indexAtTime, pointAt, type Series } from '#shared-core';
import { type Film, frameIndexAt } from '../replay/index.ts';
import { benchMarks } from '../stores/index.ts';
import type { RunCourse } from './score-guess.ts';

/** Readings this near to a time speak for it [s]. */
const reachS = 10;

/**
 * A recorded run as a course to score guesses on. Strengths are those that the window showed then, as Watch and a replay show them. There is none where it
 * showed none: before the head has settled, or while it cools.
 */
export function courseOfFilm(film: Film): RunCourse {
  const last = film.frames[film.frames.length - 1];
  const head = last?.tracks.head?.series ?? null;
  const arrivedS =
    film.verdicts.stages.find(({ stage }) => stage === 'first-fraction')?.fromS ?? null;
  return {
    headAtC: (timeS) => (head === null ? null : meanNear(head, timeS)),
    strengthAtAbv: (timeS) =>
      film.frames[frameIndexAt(film, timeS)]?.snapshot?.vapour?.alcoholByVolume?.value ?? null,
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
