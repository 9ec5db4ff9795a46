import { expect, test } from 'vitest';
import { trialWords } from '../../../shared-core/run/trial-words.ts';

test('a trial is told by what was tried and whether it worked', () => {
  const told = (['sound', 'screen'] as const).flatMap((trial) =>
    [true, false].map((worked) => trialWords({ trial, worked })),
  );
  expect(told).toEqual([
    'call heard at the still',
    'call not heard at the still',
    'class screen read from the back row',
    'class screen not read from the back row',
  ]);
});
