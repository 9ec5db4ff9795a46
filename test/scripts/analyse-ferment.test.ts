import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import {
  type PrintedFerment,
  printedFermentSchema,
} from '../../scripts/analyse/ferment-analysis.ts';
import { runAnalysis } from '../../scripts/analyse/run-analysis.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'still-head-ferment-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;

/** The object that is printed, or the sentence it ended with. */
async function judged(
  table: string | Uint8Array,
  ...options: readonly string[]
): Promise<PrintedFerment | string> {
  files += 1;
  const file = path.join(folder, `${files}.csv`);
  writeFileSync(file, table);
  let printed = '';
  const done = await runAnalysis([file, '--kind', 'ferment', ...options], (json) => {
    printed += json;
  });
  return done.ok ? printedFermentSchema.strict().parse(JSON.parse(printed)) : done.error;
}

const week: readonly (readonly [number, number])[] = [
  [0, 1.06],
  [20, 1.05],
  [44, 1.02],
  [68, 1.002],
  [92, 0.997],
  [116, 0.996],
  [140, 0.996],
  [164, 0.996],
];
const lines = (write: (timeH: number, gravity: number) => string) =>
  week.map(([timeH, gravity]) => write(timeH, gravity)).join('\n');
const plain = `time_h,gravity\n${lines((timeH, gravity) => `${timeH},${gravity.toFixed(3)}`)}\n`;
const comma = (gravity: number) => gravity.toFixed(3).replace('.', ',');

describe('npm run analyse -- FILE.csv --kind ferment', () => {
  test('prints one object of the agreed shape, judged at the last row', async () => {
    expect(await judged(plain)).toMatchObject({
      kind: 'ferment',
      state: 'finished',
      problems: [],
    });
    expect(await judged(plain.split('\n').slice(0, 4).join('\n'))).toMatchObject({
      state: 'working',
    });
  });

  test.each([
    [
      'semicolons, decimal commas and a byte order mark',
      `\ufefftime_h;gravity\n${lines((h, g) => `${h};${comma(g)}`)}`,
    ],
    ['tabs', `time_h\tgravity\n${lines((h, g) => `${h}\t${g}`)}`],
    [
      'carriage returns and a remark above',
      `Our ferment\r\ntime_h,gravity\r\n${lines((h, g) => `${h},${g}`).replaceAll('\n', '\r\n')}\r\n`,
    ],
    [
      'unknown columns and empty cells',
      `time_h,weather,gravity,mass_g\n${lines((h, g) => `${h},fine,${g},`)}`,
    ],
    ['days', `day,SG\n${lines((h, g) => `${h / 24},${g}`)}`],
    [
      'dates and times',
      `date,gravity\n${lines((h, g) => `${new Date(Date.UTC(2026, 4, 1, h)).toISOString()},${g}`)}`,
    ],
    ['gravities in kg/m³', `time_h,density\n${lines((h, g) => `${h},${1000 * g}`)}`],
    ['bytes of UTF-16', Buffer.from(`\ufeff${plain}`, 'utf16le')],
    ['quotes', plain.replaceAll(/^(\d+)/gm, '"$1"')],
  ])('takes a table with %s as it takes the plain one', async (_, table) => {
    const verdict = await judged(table);
    expect(verdict).toMatchObject({ state: 'finished', problems: [] });
  });

  test.each([
    ['nothing', '', 'The file is empty.'],
    ['text', 'hello world', 'No time column'],
    ['bytes', new Uint8Array(4000).map((_, index) => index % 7), 'not text'],
    ['no time', 'gravity\n1.05\n', 'No time column'],
    ['titles only', 'time_h,gravity\n', 'No row holds a time and a reading'],
    ['no number', 'time_h,gravity\n0,abc\n5,def\n', 'No row holds a time and a reading'],
  ])('answers a table of %s with a problem in plain words', async (_, table, problem) => {
    const verdict = await judged(table);
    expect(verdict).toMatchObject({ state: 'not-started', strengthAbv: null, finishH: null });
    expect((verdict as PrintedFerment).problems.join()).toContain(problem);
  });

  test.each([
    ['a cell that is no number', '30,x', 'Line 4: "x" in the column "gravity" is not a number.'],
    ['a gravity that cannot be', '30,2.5', 'Line 4: 2.5 in the column "gravity" can\'t be'],
    ['a time that goes back', '10,1.04', 'Line 4: the time goes back to 10.'],
    ['a time that is none', 'noon,1.04', 'Line 4: "noon" is no time.'],
  ])('tells the line of %s and judges by the others', async (_, line, problem) => {
    const rows = plain.split('\n');
    const verdict = await judged([...rows.slice(0, 3), line, ...rows.slice(3)].join('\n'));
    expect(verdict).toMatchObject({ state: 'finished' });
    expect((verdict as PrintedFerment).problems.join()).toContain(problem);
  });

  test('temperatures alone, and masses without a volume, are told', async () => {
    const warm = await judged('time_h,temperature_C\n0,22\n24,23\n');
    expect((warm as PrintedFerment).problems.join()).toContain('Temperatures alone');
    const weighed = 'time_h,mass_g\n0,1500\n24,1480\n';
    expect((await judged(weighed)) as PrintedFerment).toMatchObject({
      problems: [expect.stringContaining('--volume-ml')],
    });
    expect(await judged(weighed, '--volume-ml', '1000')).toMatchObject({ problems: [] });
  });

  test('masses that rise from nothing are what was lost, kilograms are grams', async () => {
    const lost = await judged('time_h,mass_g\n0,0\n24,20\n48,50\n72,66\n', '--volume-ml', '1000');
    const kept = await judged(
      'time_h,mass_kg\n0,1.5\n24,1.48\n48,1.45\n72,1.434\n',
      '--volume-ml',
      '1000',
    );
    expect((lost as PrintedFerment).strengthAbv?.value).toBeCloseTo(
      (kept as PrintedFerment).strengthAbv?.value ?? 0,
      0,
    );
  });

  test('options that are no numbers end with a sentence', async () => {
    expect(await judged(plain, '--volume-ml', 'much')).toContain('--volume-ml needs a number');
    expect(await judged(plain, '--sugar-g', '-5')).toContain('--sugar-g');
    expect(await judged(plain, '--charge-ml', '5')).toContain('Usage');
  });
});
