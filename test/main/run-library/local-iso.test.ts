import { execFileSync } from 'node:child_process';
import path from 'node:path';
import { expect, test } from 'vitest';
import { localIso } from '../../../main/run-library/local-iso.ts';
import { localDayWords, localTimeWords } from '../../../shared-core/wording/local-time-words.ts';

const file = path.join(import.meta.dirname, '../../../main/run-library/local-iso.ts');

/** Moments as a computer in this zone tells them. */
function toldIn(zone: string, ...moments: readonly string[]): readonly string[] {
  const program = `import(${JSON.stringify(file)}).then(({ localIso }) => console.log(${JSON.stringify(moments)}.map(localIso).join(' ')))`;
  return execFileSync(process.execPath, ['--import', 'tsx', '--eval', program], {
    env: { ...process.env, TZ: zone },
    encoding: 'utf8',
  })
    .trim()
    .split(' ');
}

test.each([
  [
    'Europe/Vienna',
    ['2026-03-28T23:30:00.000Z', '2026-03-29T09:15:00.000Z'],
    ['2026-03-29T00:30:00.000+01:00', '2026-03-29T11:15:00.000+02:00'],
  ],
  ['America/St_Johns', ['2026-01-10T01:00:00.000Z'], ['2026-01-09T21:30:00.000-03:30']],
  ['Asia/Kathmandu', ['2026-01-10T01:00:00.000Z'], ['2026-01-10T06:45:00.000+05:45']],
] as const)(
  'a moment is told in %s with the offset that holds there then',
  (zone, moments, told) => {
    expect(toldIn(zone, ...moments)).toEqual(told);
    expect(told.map((iso) => new Date(iso).toISOString())).toEqual(moments);
  },
);

test('here too it is the moment that it was, told in the hours of this computer', () => {
  for (const iso of ['2026-01-10T01:00:00.000Z', '2026-07-10T13:45:30.250Z']) {
    const told = localIso(iso);
    const here = new Date(iso);
    expect(new Date(told).toISOString()).toBe(iso);
    expect(told.slice(11, 16)).toBe(
      [here.getHours(), here.getMinutes()].map((two) => `${two}`.padStart(2, '0')).join(':'),
    );
  }
});

test('what is no moment stays as it is', () => {
  expect([localIso(''), localIso('not said')]).toEqual(['', 'not said']);
});

test('people read it to the minute, with the offset written out', () => {
  expect([
    localTimeWords('2026-03-29T11:15:00.000+02:00'),
    localTimeWords('2026-01-09T21:30:00.000-03:30'),
    localTimeWords('2026-03-18T09:15:00.000Z'),
  ]).toEqual([
    '2026-03-29 11:15 (UTC+02:00)',
    '2026-01-09 21:30 (UTC−03:30)',
    '2026-03-18 09:15 (UTC+00:00)',
  ]);
});

test('a day is that of the zone that the run is told in', () => {
  const began = '2026-03-10T23:30:00.000Z';
  expect(localDayWords(began, '2026-03-18T10:15:00.000+01:00')).toBe('2026-03-11');
  expect(localDayWords(began, '2026-03-18T09:15:00.000Z')).toBe('2026-03-10');
});
