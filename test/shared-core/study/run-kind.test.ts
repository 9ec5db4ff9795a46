import { expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { kindWords, runKind } from '../../../shared-core/study/run-kind.ts';

test('a run is simple without a column, fractional with one plate or more, and not described where nobody said', () => {
  const kinds = [null, 0, 1, 6].map((plates) => {
    const settings = { rig: { ...defaultRunSettings.rig, plates } };
    return [runKind(settings), kindWords(settings)];
  });
  expect(kinds).toEqual([
    ['not described', 'not described'],
    ['simple', 'simple, no column'],
    ['fractional', 'fractional, 1 plate'],
    ['fractional', 'fractional, 6 plates'],
  ]);
});
