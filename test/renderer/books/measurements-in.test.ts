import { expect, test } from 'vitest';
import type { MarkBody, RunInput } from '#shared-core';
import { measurementsIn } from '../../../renderer/books/measurements-in.ts';

const marked = (...marks: readonly MarkBody[]): readonly RunInput[] =>
  marks.map((mark, index) => ({ kind: 'mark', timeS: 600 + index, markId: index + 1, mark }));
const idsOf = (...marks: readonly MarkBody[]) =>
  measurementsIn(marked(...marks)).map(({ markId }) => markId);

test('what was read at the still is listed among the measurements of the books, which are made from it', () => {
  expect(
    idsOf(
      { type: 'heat-on' },
      { type: 'volume-read', volumeMl: 8 },
      { type: 'mass-read', massG: 12 },
      { type: 'receiver-changed', volumeMl: 20 },
      { type: 'strength-read', alcoholByVolume: 88, sampleTemperatureC: 21 },
      { type: 'liquid-mass', liquid: 'residue', massG: 310 },
    ),
  ).toEqual([2, 3, 4, 5, 6]);
});

test('a receiver of which nothing was read, and a reading that was withdrawn, are no measurements', () => {
  expect(
    idsOf(
      { type: 'receiver-changed', volumeMl: null },
      { type: 'volume-read', volumeMl: 8 },
      { type: 'mark-withdrawn', withdrawnMarkId: 2 },
      { type: 'note', text: 'clear' },
    ),
  ).toEqual([]);
});
