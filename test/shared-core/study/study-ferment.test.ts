import { describe, expect, test } from 'vitest';
import { studyFerment } from '../../../shared-core/study/study-ferment.ts';
import { pearWeek } from './support/pear-week.ts';

describe('a ferment’s week', () => {
  test('has every entry that stands, in its hour, its gravity at 20 °C, and no note', () => {
    const week = pearWeek();
    const { moments, kept } = studyFerment(week);
    expect(moments.map(({ timeH }) => timeH)).toEqual([0, 24, 36, 48, 60, 72, 96, 120, 144, 167]);
    expect(moments.map(({ entryId }) => entryId)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(moments[0]?.gravityAt20C).toBeCloseTo(1.058, 3);
    expect(moments.at(-1)?.gravityAt20C).toBeCloseTo(0.998, 2);
    expect(JSON.stringify({ moments, kept })).not.toContain('Kim');
    expect(kept.entries.every(({ read }) => read.note === '')).toBe(true);
    expect(week.kept.entries.some(({ read }) => read.note.includes('Kim'))).toBe(true);
  });

  test('tells at each reading what was known by then, by the clock of the log, and at the end that it is finished', () => {
    const { course, verdict, advice } = studyFerment(pearWeek());
    expect(course.map(({ timeH }) => timeH)).toEqual([0, 24, 36, 48, 60, 72, 96, 120, 144, 167]);
    expect(course.map(({ state }) => state).at(-1)).toBe(verdict.state);
    expect(verdict.state).toBe('finished');
    expect(advice.isGo).toBe(true);
    const done = course.map(({ donePercent }) => donePercent.value);
    expect(done[1]).toBeLessThan(30);
    expect(done.at(-1)).toBeGreaterThan(90);
    // 1.058 down to 0.998: some 8 % vol by the usual factor of 131.
    expect(course.at(-1)?.strengthAbv.value).toBeGreaterThan(7.3);
    expect(course.at(-1)?.strengthAbv.value).toBeLessThan(8.5);
    expect(course.at(-1)?.gravity.value).toBeCloseTo(0.998, 2);
  });

  test('is counted in days of its own, each with how warm it was', () => {
    const { days, stretches, band } = studyFerment(pearWeek());
    expect(days.map(({ day }) => day)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(stretches).toHaveLength(167 * 6);
    expect(band).toEqual({ lowC: 25, aimC: 30, highC: 34 });
    // The cold night from hour 40 to 47 is on the second day.
    expect(days.map(({ tally }) => tally.belowH > 1)).toEqual([
      false,
      true,
      false,
      false,
      false,
      false,
      false,
    ]);
    expect(days[1]?.tally.lowC).toBeCloseTo(22.9, 1);
    expect(days.map(({ tally }) => tally.heardH)).toEqual([24, 24, 24, 24, 24, 24, 23]);
  });

  test('counts what was heard before its beginning to its first day', () => {
    const week = pearWeek();
    const early = { ...week.warmth.minutes[0]!, atIso: '2026-03-07T20:00:00.000Z' };
    const { days } = studyFerment({
      ...week,
      warmth: { band: null, minutes: [early, ...week.warmth.minutes] },
    });
    expect(days.map(({ day }) => day)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(days[0]?.tally.heardH).toBeCloseTo(24 + 1 / 60, 9);
  });

  test('without a probe in it has the usual band and no day, without readings no course', () => {
    const bare = studyFerment(pearWeek({ hasWarmth: false }));
    expect([bare.days, bare.stretches, bare.band.aimC]).toEqual([[], [], 30]);
    const week = pearWeek();
    const empty = studyFerment({ ...week, kept: { ...week.kept, entries: [] } });
    expect([empty.course, empty.moments, empty.verdict.state, empty.balance]).toEqual([
      [],
      [],
      'not-started',
      null,
    ]);
  });

  test('says what has become of its sugar', () => {
    const { balance, runId, name, startedAtIso } = studyFerment(pearWeek());
    expect([runId, name, startedAtIso]).toEqual([
      '20260308T080000Z',
      'Pear juice',
      '2026-03-08T08:00:00.000Z',
    ]);
    expect(balance?.volumeMl).toBe(1000);
    expect(balance?.sugarG.value).toBeCloseTo(130, 0);
    expect(balance?.ethanolG.value).toBeGreaterThan(7.3 * 7.89);
    expect(balance?.ethanolG.value).toBeLessThan(8.5 * 7.89);
  });
});
