import { expect, test } from 'vitest';
import type { MarkBody, RunInput } from '#shared-core';
import { receiverCount } from '../../../renderer/books/receiver-count.ts';

const marked = (...marks: readonly MarkBody[]): readonly RunInput[] =>
  marks.map((mark, index) => ({ kind: 'mark', timeS: 60 * index, markId: index + 1, mark }));
const changed = { type: 'receiver-changed', volumeMl: null } as const;

test('a run has as many receivers as were put in place, without a change that was taken back', () => {
  expect(
    [
      marked(),
      marked(changed),
      marked(changed, changed),
      marked(changed, changed, { type: 'mark-withdrawn', withdrawnMarkId: 2 }),
    ].map((inputs) => receiverCount(inputs, 600)),
  ).toEqual([1, 2, 3, 2]);
});
