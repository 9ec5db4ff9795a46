import { clockWords, type LogBody, type LogRecord, worded } from '#shared-core';
import type { ReadReport } from './read-run-log.ts';

type Where = NonNullable<Extract<LogBody, { readonly kind: 'dropped' }>['where']>;

/** Readings that were measured and stand nowhere, where they were lost, and when that was [s]. */
export interface LostReadings {
  readonly where: Where;
  readonly readings: number;
  readonly fromS: number;
  readonly toS: number;
}

/** From when on the monitor had failed [s], and when a program that was started anew advised again; null where none did. */
interface Unadvised {
  readonly fromS: number;
  readonly toS: number | null;
}

/** From when on nobody read the probe [s], and when it was heard again; null where it never was. */
export interface Unread {
  readonly fromS: number;
  readonly toS: number | null;
}

/** Gathers what a run's record lacks, and what the run itself had to do without, record by record. */
export interface LeftOut {
  add(record: Pick<LogRecord, 'body'>): void;
  /** For each place where readings were lost for want of room, all of them together. */
  lost(): readonly LostReadings[];
  /** When nobody read the probe. */
  unread(): readonly Unread[];
  /** Everything that is or was missing, each cause in a sentence that says what is and what is not lost. */
  sentences(report: Pick<ReadReport, 'missingRecords' | 'unknownRecords'>): readonly string[];
}

export function createLeftOut(): LeftOut {
  const lost = new Map<Where, LostReadings>();
  const unadvised: Unadvised[] = [];
  const unread: Unread[] = [];
  let isTakenIn = false;
  return {
    add({ body }) {
      if (body.kind === 'header') isTakenIn = body.header.origin === 'imported';
      const stretch = unadvised.at(-1);
      const gap = unread.at(-1);
      if (body.kind === 'link') {
        if (gap?.toS === null) unread.splice(-1, 1, { ...gap, toS: body.timeS });
        if (body.reason === 'reader-stopped' && body.state === 'lost') {
          unread.push({ fromS: body.timeS, toS: null });
        }
      }
      if (body.kind === 'monitor-failed') unadvised.push({ fromS: body.timeS, toS: null });
      if (body.kind === 'continued' && stretch?.toS === null) {
        unadvised.splice(-1, 1, { ...stretch, toS: body.timeS });
      }
      if (body.kind !== 'dropped') return;
      const { where = 'disk', readings, fromS, toS } = body;
      const before = lost.get(where) ?? { readings: 0, fromS, toS };
      lost.set(where, {
        where,
        readings: before.readings + readings,
        fromS: Math.min(before.fromS, fromS),
        toS: Math.max(before.toS, toS),
      });
    },
    lost: () => [...lost.values()],
    unread: () => [...unread],
    sentences: ({ missingRecords, unknownRecords }) => [
      ...(missingRecords === 0
        ? []
        : [
            worded(
              '{count, plural, one {# damaged record was skipped} other {# damaged records were skipped}}; the rest is good.',
              { count: missingRecords },
            ),
          ]),
      ...(unknownRecords === 0
        ? []
        : [
            worded(
              '{count, plural, one {# record is} other {# records are}} left out here: a newer version of this program wrote what this one does not know. Nothing of it is lost; that version shows it.',
              { count: unknownRecords },
            ),
          ]),
      ...[...lost.values()].map(lostWords),
      ...unread.map(unreadWords),
      ...unadvised.map(isTakenIn ? unfollowedWords : unadvisedWords),
    ],
  };
}

function lostWords({ where, readings, fromS, toS }: LostReadings): string {
  const values = { count: readings, from: clockWords(fromS), to: clockWords(toS) };
  return where === 'disk'
    ? worded(
        '{count, plural, one {# reading is} other {# readings are}} missing between {from} and {to}: the disk took nothing, and memory had no more room.',
        values,
      )
    : worded(
        '{count, plural, one {# reading is} other {# readings are}} missing between {from} and {to}: more came from the probe than could be taken.',
        values,
      );
}

function unreadWords({ fromS, toS }: Unread): string {
  const from = clockWords(fromS);
  return toS === null
    ? worded(
        'From {from} on nothing of the probe is recorded: the part of the program that reads it had stopped. What the probe sent then is lost.',
        { from },
      )
    : worded(
        'From {from} to {to} nothing of the probe is recorded: the part of the program that reads it had stopped. What the probe sent then is lost.',
        { from, to: clockWords(toS) },
      );
}

/** Whoever took a table in had nobody to advise: the run was long over. */
function unfollowedWords({ fromS }: Unadvised): string {
  return worded(
    'When this table was taken in, the monitor failed on it from {from} on. The readings are all there; what is told of that time was worked out later.',
    { from: clockWords(fromS) },
  );
}

function unadvisedWords({ fromS, toS }: Unadvised): string {
  const from = clockWords(fromS);
  return toS === null
    ? worded(
        'From {from} on nobody was advised: the monitor had failed. The readings are all recorded; what is told of that time was worked out after the run.',
        { from },
      )
    : worded(
        'From {from} to {to} nobody was advised: the monitor had failed. The readings are all recorded; what is told of that time was worked out after the run.',
        { from, to: clockWords(toS) },
      );
}
