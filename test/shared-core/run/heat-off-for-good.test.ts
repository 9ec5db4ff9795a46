import { expect, test } from 'vitest';
import type { Mark, MarkBody } from '#shared-core';
import { heatOffForGoodS } from '../../../shared-core/run/heat-off-for-good.ts';

/** Marks a minute apart. */
const marks = (...bodies: readonly MarkBody[]): readonly Mark[] =>
  bodies.map((mark, index) => ({ kind: 'mark', timeS: 60 * index, markId: index + 1, mark }));

const [on, off, eased, note] = [
  { type: 'heat-on' },
  { type: 'heat-off' },
  { type: 'heat-eased' },
  { type: 'note', text: 'clear' },
] as const;

test('the heat is off for good where the last mark of the heat says so, whatever else is marked later', () => {
  expect([
    heatOffForGoodS(marks(on, off)),
    heatOffForGoodS(marks(on, off, note)),
    heatOffForGoodS(marks(on, off, on, off, note)),
  ]).toEqual([60, 60, 180]);
});

test('a flame that was put back, or eased afterwards, heats', () => {
  expect([
    heatOffForGoodS(marks(on, off, on)),
    heatOffForGoodS(marks(on, off, eased)),
    heatOffForGoodS(marks(on, note)),
    heatOffForGoodS([]),
  ]).toEqual([null, null, null, null]);
});
