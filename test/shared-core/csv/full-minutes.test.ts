import { describe, expect, test } from 'vitest';
import { type Reading, readReadingsCsv } from '#shared-core';
import { withinMinutes } from '../../../shared-core/csv/full-minutes.ts';

/** Times of the readings of a table [s]. */
function timesOf(csv: string): readonly number[] {
  const read = readReadingsCsv(csv);
  return read.ok
    ? read.value.inputs
        .filter((input): input is Reading => input.kind === 'reading')
        .map(({ timeS }) => timeS)
    : [];
}

const everySeconds = (seconds: number, count: number, first = 0) =>
  Array.from({ length: count }, (_, row) => first + row * seconds);
const clock = (timeS: number) =>
  `${Math.floor(timeS / 3600)}:${String(Math.floor(timeS / 60) % 60).padStart(2, '0')}`;

describe('times to the minute', () => {
  test.each<[string, (timeS: number) => string]>([
    ['of a clock', (timeS) => clock(36_000 + timeS)],
    ['with their date', (timeS) => `27.11.2026 ${clock(36_000 + timeS)}`],
    ['in whole minutes', (timeS) => `${Math.floor(timeS / 60)} min`],
    ['as French loggers write them', (timeS) => clock(36_000 + timeS).replace(':', 'h')],
  ])('%s give each of their readings a moment of its own', (_, written) => {
    const rows = everySeconds(10, 40, 30).map((timeS) => `${written(timeS)};${20 + timeS}`);
    expect(timesOf(`Zeit;Kopf\n${rows.join('\n')}\n`)).toEqual(everySeconds(10, 40));
  });

  test('say so, once', () => {
    const rows = everySeconds(15, 20).map((timeS) => `${clock(36_000 + timeS)};20`);
    const read = readReadingsCsv(`Zeit;Kopf\n${rows.join('\n')}\n`);
    expect(read.ok && read.value.remarks).toEqual([
      'The times are to the minute only; the readings of a minute (4 in most) were spread evenly over it.',
    ]);
  });

  test('of one reading a minute, or of one beside its seconds, stay as they are', () => {
    const once = everySeconds(60, 9);
    expect(
      timesOf(`Zeit;Kopf\n${once.map((timeS) => `${clock(36_000 + timeS)};20`).join('\n')}\n`),
    ).toEqual(once);
    expect(withinMinutes([0, 0, 60, 60, 120, 120, 121])).toBeNull();
    expect(withinMinutes([0, 0, 60, 60])).toBeNull();
  });

  test('stay as they are where other rows say what else was done', () => {
    const rows = everySeconds(60, 5).flatMap((timeS) => [
      `${timeS},20,`,
      `${timeS},,receiver-changed`,
    ]);
    expect(timesOf(`time_s,head_degC,marks\n${rows.join('\n')}\n`)).toEqual(everySeconds(60, 5));
  });

  test('keep a pause, a minute with too many readings and one with too few', () => {
    const minutes = [0, 0, 60, 60, 60, 120, 120, 300, 360, 360].map((timeS) => `${timeS},20`);
    expect(timesOf(`time_s,head\n${minutes.join('\n')}\n`)).toEqual([
      0, 30, 60, 90, 105, 120, 150, 300, 360, 390,
    ]);
  });
});
