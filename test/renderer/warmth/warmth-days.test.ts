import { afterAll, expect, test } from 'vitest';
import { warmthDays } from '../../../renderer/warmth/warmth-days.ts';
import { setLanguage } from '../../../shared-core/index.ts';

afterAll(() => setLanguage('en'));

test('the days of a ferment are named in the language of the window', () => {
  setLanguage('de');
  const stretch = {
    atIso: '2026-05-06T12:00:00.000Z',
    lowC: 21,
    meanC: 22,
    highC: 23,
    minutes: 60,
  };
  const days = warmthDays([stretch], { lowC: 18, aimC: 22, highC: 26 });
  expect(days.map(({ day }) => day)).toEqual(['Mittwoch, 6. Mai']);
});
