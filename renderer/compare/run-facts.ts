import { collectedCourse, heatOffForGoodS, plateauOfRun, type Stage } from '#shared-core';
import type { Film } from '../replay/index.ts';
import { benchMarks } from '../stores/index.ts';

/** What is compared between runs; null where a run does not have it. Times count from vapour arrival. */
export interface RunFacts {
  readonly pressureKPa: number;
  readonly leastStrengthAbv: number;
  readonly azeotropeC: number | null;
  /** When vapour reached the head, counted from the start of the run [s]. */
  readonly arrivedS: number | null;
  readonly plateau: ReturnType<typeof plateauOfRun>;
  readonly mainFractionS: number | null;
  readonly heatOffCalledS: number | null;
  readonly heatOffDoneS: number | null;
  readonly collectedMl: number | null;
}

/** The facts of one run, from its verdicts, its marks and its head. */
export function runFacts(film: Film): RunFacts {
  const { verdicts, settings, endS } = film;
  const last = film.frames[film.frames.length - 1];
  const marks = last?.marks ?? [];
  const span = (wanted: Stage) => verdicts.stages.find(({ stage }) => stage === wanted);
  const first = span('first-fraction');
  const main = span('main-fraction');
  const arrivedS = first?.fromS ?? null;
  const sinceArrival = (timeS: number | undefined) =>
    timeS === undefined || arrivedS === null ? null : timeS - arrivedS;
  const bookings = collectedCourse(marks, arrivedS);
  return {
    pressureKPa: last?.snapshot?.plateau.pressureKPa ?? settings.pressure.pressureKPa,
    leastStrengthAbv: settings.leastStrengthAbv,
    azeotropeC: last?.snapshot?.plateau.azeotropeC ?? null,
    arrivedS,
    plateau: plateauOfRun(film),
    mainFractionS: main ? (main.toS ?? endS) - main.fromS : null,
    heatOffCalledS: sinceArrival(
      verdicts.alarms.find(({ alarm }) => alarm === 'plateau-departure')?.raisedS,
    ),
    heatOffDoneS: sinceArrival(heatOffForGoodS(benchMarks(marks)) ?? undefined),
    collectedMl: lastVolume(bookings),
  };
}

function lastVolume(bookings: ReturnType<typeof collectedCourse>): number | null {
  return bookings[bookings.length - 1]?.volumeMl ?? null;
}
