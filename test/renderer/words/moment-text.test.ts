import { execFileSync } from 'node:child_process';
import path from 'node:path';
import { expect, test } from 'vitest';

const file = path.join(import.meta.dirname, '../../../renderer/words/moment-text.ts');

/** What a field says of each moment, and what is read of it again, on a computer in this zone. */
function toldIn(zone: string, ...moments: readonly string[]): unknown {
  const program = `import(${JSON.stringify(file)}).then(({ momentIso, momentText }) =>
    console.log(JSON.stringify(${JSON.stringify(moments)}.map((iso) => [momentText(iso), momentIso(momentText(iso), iso)]))))`;
  return JSON.parse(
    execFileSync(process.execPath, ['--import', 'tsx', '--eval', program], {
      env: { ...process.env, TZ: zone },
      encoding: 'utf8',
    }),
  );
}

/** What is typed, read on a computer in this zone at a moment. */
function readIn(zone: string, typed: string, near: string): unknown {
  const program = `import(${JSON.stringify(file)}).then(({ momentIso }) => console.log(JSON.stringify(momentIso(${JSON.stringify(typed)}, ${JSON.stringify(near)}))))`;
  return JSON.parse(
    execFileSync(process.execPath, ['--import', 'tsx', '--eval', program], {
      env: { ...process.env, TZ: zone },
      encoding: 'utf8',
    }),
  );
}

test('a field that was left alone says the moment that it was filled with, in the hour that summer time ends twice too', () => {
  expect(toldIn('Europe/Vienna', '2026-10-25T00:30:12.000Z', '2026-10-25T01:30:12.000Z')).toEqual([
    ['2026-10-25T02:30', '2026-10-25T00:30:12.000Z'],
    ['2026-10-25T02:30', '2026-10-25T01:30:12.000Z'],
  ]);
});

test.each([
  ['Europe/Vienna', '2026-10-25T02:20', '2026-10-25T01:25:00.000Z', '2026-10-25T01:20:00.000Z'],
  ['Europe/Vienna', '2026-10-25T02:20', '2026-10-25T00:25:00.000Z', '2026-10-25T00:20:00.000Z'],
  [
    'Australia/Lord_Howe',
    '2026-04-05T01:40',
    '2026-04-04T15:15:00.000Z',
    '2026-04-04T15:10:00.000Z',
  ],
  ['Europe/Vienna', '2026-03-29T02:30', '2026-03-29T08:00:00.000Z', '2026-03-29T01:30:00.000Z'],
  ['Europe/Vienna', '2026-05-01T08:30', '', '2026-05-01T06:30:00.000Z'],
  ['Europe/Vienna', '', '2026-10-25T01:25:00.000Z', null],
  ['Europe/Vienna', 'yesterday', '2026-10-25T01:25:00.000Z', null],
])('in %s “%s”, typed at %s, is the nearest moment that it can be', (zone, typed, near, iso) => {
  expect(readIn(zone, typed, near)).toBe(iso);
});
