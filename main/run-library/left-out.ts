import { clockWords, type LogRecord, worded } from '#shared-core';
import type { ReadReport } from './read-run-log.ts';

/** Readings that were measured and stand nowhere, and when that was [s]. */
export interface LostReadings {
  readonly readings: number;
  readonly fromS: number;
  readonly toS: number;
}

/** Gathers what a run's record lacks, record by record. */
export interface LeftOut {
  add(record: LogRecord): void;
  /** Null where no reading was lost for want of room. */
  lost(): LostReadings | null;
  /** Everything that is missing, each cause in a sentence that says what is and what is not lost. */
  sentences(report: Pick<ReadReport, 'missingRecords' | 'unknownRecords'>): readonly string[];
}

export function createLeftOut(): LeftOut {
  let lost: LostReadings | null = null;
  return {
    add({ body }) {
      if (body.kind !== 'dropped') return;
      const before: LostReadings = lost ?? { readings: 0, fromS: body.fromS, toS: body.toS };
      lost = {
        readings: before.readings + body.readings,
        fromS: Math.min(before.fromS, body.fromS),
        toS: Math.max(before.toS, body.toS),
      };
    },
    lost: () => lost,
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
      ...(lost === null
        ? []
        : [
            worded(
              '{count, plural, one {# reading is} other {# readings are}} missing between {from} and {to}: the disk took nothing, and memory had no more room.',
              {
                count: lost.readings,
                from: clockWords(lost.fromS),
                to: clockWords(lost.toS),
              },
            ),
          ]),
    ],
  };
}
