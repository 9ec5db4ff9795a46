import { expect, test } from 'vitest';
import type { RunSummary } from '#shared-core';
import { type everything, matchingRuns } from '../../../renderer/look-back/matching-runs.ts';

const run = (runId: string, changes: Partial<RunSummary>): RunSummary => ({
  runId,
  name: runId,
  notes: '',
  startedAtIso: '2026-03-18T09:15:00.000Z',
  durationS: 60,
  readings: 1,
  ended: 'clean',
  rehearsal: false,
  plateau: null,
  heatOffCalledS: null,
  damagedRecords: 0,
  unreadable: null,
  ...changes,
});
const runs = [
  run('a', { name: 'Gruppe 4, Prüfung' }),
  run('b', { name: 'Group 14', notes: 'short column', imported: true }),
  run('c', { name: 'Practice', rehearsal: true, startedAtIso: '2026-05-02T10:00:00.000Z' }),
];
const found = (text: string, filter: (typeof everything)['filter'] = 'all') =>
  matchingRuns(runs, { text, filter }).map(({ runId }) => runId);

test('runs are found by words of name, notes and date, whatever the capitals and accents', () => {
  expect([
    found(''),
    found('pruf 4'),
    found('COLUMN'),
    found('2026-05'),
    found('4'),
    found('nothing of this'),
  ]).toEqual([['a', 'b', 'c'], ['a'], ['b'], ['c'], ['a', 'b'], []]);
});

test('runs are shown by where their readings come from', () => {
  expect([found('', 'recorded'), found('', 'imported'), found('', 'rehearsal')]).toEqual([
    ['a'],
    ['b'],
    ['c'],
  ]);
});

test('a month is found by its whole name, and a number of a date only whole, not in the minutes', () => {
  expect([found('march'), found('may practice'), found('18'), found('8'), found('15')]).toEqual([
    ['a', 'b'],
    ['c'],
    ['a', 'b'],
    [],
    [],
  ]);
});

test('a run of the small hours is found by the day on its card, not by the one it was in Greenwich', () => {
  const zone = process.env.TZ;
  process.env.TZ = 'Europe/Vienna';
  const late = [run('late', { startedAtIso: '2026-03-17T23:30:00.000Z' })];
  const byDay = (text: string) => matchingRuns(late, { text, filter: 'all' }).length;
  expect([byDay('2026-03-18'), byDay('18'), byDay('2026-03-17')]).toEqual([1, 1, 0]);
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});
