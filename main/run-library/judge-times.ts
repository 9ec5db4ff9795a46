import type { LogRecord } from '#shared-core';

/** Something in a whole record that cannot have been so. */
export type TimeDoubt =
  | {
      /** More readings of a channel on one moment than its probe can have sent in one. */
      readonly kind: 'on-one-moment';
      readonly channel: string;
      readonly timeS: number;
      readonly readings: number;
      /** How long the probe takes for as many at its usual pace [s of real time]. */
      readonly usuallyTakeS: number;
    }
  | {
      /** A sleep of the computer is recorded, or that the program was closed, and readings that were heard in it. */
      readonly kind: 'heard-asleep' | 'heard-closed';
      readonly fromS: number;
      readonly toS: number;
      readonly readings: number;
    }
  | {
      /** What came later is stamped earlier. */
      readonly kind: 'going-back';
      readonly what: string;
      readonly timeS: number;
      readonly afterS: number;
    };

/** Judges whether the moments in a run's record are plausible, record by record in their order. */
export interface TimeJudge {
  add(record: LogRecord): void;
  doubts(): readonly TimeDoubt[];
  /** When the program was closed in mid-run, as recorded [s]. */
  closed(): readonly { readonly fromS: number; readonly toS: number }[];
}

/** Two lines of a slow probe that came in one piece may share a moment; so many do not. */
const fewestOnOneMoment = 5;
/** A flood puts several readings into one millisecond; what takes longer than this was heard at other moments [s of real time]. */
const leastTakeS = 1;
/** Stamps are rounded to a millisecond. */
const roundingS = 0.002;
/** When a sleep began and ended is known to about a look at the clocks [s of real time]. */
const sleepEdgeS = 1;
/** A slow probe's lines from before and after a sleep may come in one piece and be spread into it. */
const fewestHeardAsleep = 3;

/** Marks are judged like one more channel, by their order alone; no channel has a space in its name. */
const marks = 'the marks';

/** A time in which nothing can have been heard. */
interface Absence {
  readonly fromS: number;
  readonly toS: number;
  readonly why: 'heard-asleep' | 'heard-closed';
}

const absenceDoubts: Readonly<Record<string, Absence['why']>> = {
  'computer-asleep': 'heard-asleep',
  'program-closed': 'heard-closed',
};

interface Course {
  readonly timesS: number[];
  latestS: number;
  wentBack: TimeDoubt | null;
}

export function createTimeJudge(): TimeJudge {
  const courses = new Map<string, Course>();
  const absences: Absence[] = [];
  let absent: Pick<Absence, 'fromS' | 'why'> | null = null;
  let timeScale = 1;
  let isImported = false;

  function follow(what: string, timeS: number): void {
    let course = courses.get(what);
    if (course === undefined) {
      course = { timesS: [], latestS: 0, wentBack: null };
      courses.set(what, course);
    }
    if (timeS < course.latestS - roundingS) {
      course.wentBack ??= { kind: 'going-back', what, timeS, afterS: course.latestS };
    }
    course.latestS = Math.max(course.latestS, timeS);
    if (what !== marks) course.timesS.push(timeS);
  }

  function bunches(): readonly Bunch[] {
    // Another logger's clock may count in minutes; what it says is all there is.
    if (isImported) return [];
    return [...courses].flatMap(([channel, { timesS }]) =>
      bunchesOf(timesS)
        .map((bunch) => ({ ...bunch, channel, usuallyTakeS: bunch.usuallyTakeS / timeScale }))
        .filter(({ usuallyTakeS }) => usuallyTakeS >= leastTakeS),
    );
  }

  function heardIn(sleep: { fromS: number; toS: number }, found: readonly Bunch[]): number {
    const edgeS = sleepEdgeS * timeScale;
    const within = (timeS: number) => timeS > sleep.fromS + edgeS && timeS < sleep.toS - edgeS;
    const inside = [...courses.values()].reduce(
      (sum, { timesS }) => sum + timesS.filter(within).length,
      0,
    );
    // Services that stood still once took what had waited for what was heard on waking.
    const onWaking = found
      .filter(({ timeS }) => Math.abs(timeS - sleep.toS) <= edgeS)
      .reduce((sum, { readings }) => sum + readings, 0);
    return inside + onWaking;
  }

  return {
    add({ body }) {
      if (body.kind === 'header' || body.kind === 'segment') {
        timeScale = body.header.timeScale;
        isImported = body.header.origin === 'imported';
      } else if (body.kind === 'mark') {
        follow(marks, body.timeS);
      } else if (body.kind === 'readings') {
        for (const [timeS, channel] of body.readings) follow(channel, timeS);
      } else if (body.kind === 'link' && body.state === 'back') {
        if (absent !== null) absences.push({ ...absent, toS: body.timeS });
        absent = null;
      } else if (body.kind === 'link') {
        const why = absenceDoubts[body.reason];
        absent = why === undefined ? null : { fromS: body.timeS, why };
      }
    },
    closed: () =>
      absences.flatMap(({ why, fromS, toS }) => (why === 'heard-closed' ? [{ fromS, toS }] : [])),
    doubts() {
      const found = bunches();
      const heard = absences
        .map((absence) => ({ ...absence, readings: heardIn(absence, found) }))
        .filter(({ readings }) => readings >= fewestHeardAsleep)
        .map(({ why, ...rest }) => ({ kind: why, ...rest }));
      return [
        ...found.map((bunch) => ({ kind: 'on-one-moment', ...bunch }) as const),
        ...heard,
        ...[...courses.values()].flatMap(({ wentBack }) => wentBack ?? []),
      ];
    },
  };
}

type Bunch = Omit<Extract<TimeDoubt, { kind: 'on-one-moment' }>, 'kind'>;

/** Readings of one channel that share a moment, with how long so many usually take [s of run time]. */
function bunchesOf(timesS: readonly number[]): readonly Omit<Bunch, 'channel'>[] {
  const runs: { readonly timeS: number; readings: number }[] = [];
  for (const timeS of timesS) {
    const last = runs.at(-1);
    if (last?.timeS === timeS) last.readings += 1;
    else runs.push({ timeS, readings: 1 });
  }
  const intervalsS = runs.slice(1).map(({ timeS }, index) => timeS - (runs[index]?.timeS ?? timeS));
  const usualS = median(intervalsS);
  return runs
    .filter(({ readings }) => readings >= fewestOnOneMoment)
    .map((run) => ({ ...run, usuallyTakeS: run.readings * usualS }));
}

/** Of no interval at all: a whole record on one moment has no pace to be judged by. */
function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
