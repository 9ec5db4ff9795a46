import { expect, test } from 'vitest';
import { reportOfFerments } from '../../../shared-core/report/report-of-ferment.ts';
import { plainWeek } from '../exercises/support/plain-week.ts';

test('a report tells what was stated of a ferment until it was put right, when, and why', () => {
  const week = plainWeek();
  const { stated } = week.kept;
  const thirdDay = new Date(Date.parse(stated.beganAtIso) + 72 * 3_600_000).toISOString();
  const before = { ...stated, volumeMl: 900, sugarG: null };
  const corrections = [{ keptAtIso: thirdDay, before, reason: 'volume misread' }];
  const study = { ...week, kept: { ...week.kept, corrections } };
  const items = reportOfFerments([study]).blocks.flatMap((block) =>
    block.kind === 'list' ? block.items : [],
  );
  expect(items).toContain(
    'Volume 1000 mL; sugar as hexose 128 to 132 g; in it: 1 L of pear juice.',
  );
  expect(items).toContain(
    'What was stated was corrected on day 3.0: volume misread. Until then: Volume 900 mL; sugar not stated; in it: 1 L of pear juice.',
  );
});
