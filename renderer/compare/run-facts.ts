import {
  type Booking,
  collectedCourse,
  indexAtTime,
  pointAt,
  type Series,
  type Stage,
} from '#shared-core';
import type { Film } from '../look-back/film.ts';
import { benchMarks } from '../stores/index.ts';

/** What is compared between runs; null where a run does not have it. Times count from vapour arrival. */
export interface RunFacts {
  readonly pressureKPa: number;
  readonly leastStrengthAbv: number;
  readonly azeotropeC: number | null;
  /** When vapour reached the head, counted from the start of the run [s]. */
  readonly arrivedS: number | null;
  /** Median head temperature of first and main fraction [°C]. */
  readonly plateauC: number | null;
  readonly plateauS: number | null;
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
  const plateauEndS = main?.toS ?? first?.toS ?? (first ? endS : null);
  const head = last?.tracks.head?.series ?? null;
  const bookings = collectedCourse(marks, arrivedS);
  const plateauC =
    head !== null && arrivedS !== null && plateauEndS !== null
      ? medianBetween(head, arrivedS, plateauEndS)
      : null;
  return {
    pressureKPa: last?.snapshot?.plateau.pressureKPa ?? settings.pressure.pressureKPa,
    leastStrengthAbv: settings.leastStrengthAbv,
    azeotropeC: last?.snapshot?.plateau.azeotropeC ?? null,
    arrivedS,
    plateauC,
    plateauS: arrivedS === null || plateauEndS === null ? null : plateauEndS - arrivedS,
    mainFractionS: main ? (main.toS ?? endS) - main.fromS : null,
    heatOffCalledS: sinceArrival(
      verdicts.alarms.find(({ alarm }) => alarm === 'plateau-departure')?.raisedS,
    ),
    heatOffDoneS: sinceArrival(
      benchMarks(marks).findLast(({ mark }) => mark.type === 'heat-off')?.timeS,
    ),
    collectedMl: lastVolume(bookings),
  };
}

function lastVolume(bookings: readonly Booking[]): number | null {
  return bookings[bookings.length - 1]?.volumeMl ?? null;
}

function medianBetween(series: Series, fromS: number, toS: number): number | null {
  const values: number[] = [];
  for (let index = indexAtTime(series, fromS); index < indexAtTime(series, toS); index++) {
    values.push(pointAt(series, index)?.value ?? 0);
  }
  if (values.length === 0) return null;
  values.sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)] ?? null;
}
