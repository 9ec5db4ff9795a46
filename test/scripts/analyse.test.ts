import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { afterAll, describe, expect, test } from 'vitest';
import { type Result, succeed } from '#shared-core';
import { printedVerdictsSchema } from '../../scripts/analyse/printed-verdicts.ts';
import { runAnalysis } from '../../scripts/analyse/run-analysis.ts';

/** Its answer as text, or the sentence it ended with. */
async function analysed(args: readonly string[]): Promise<Result<string, string>> {
  let printed = '';
  const done = await runAnalysis(args, (json) => {
    printed += json;
  });
  return done.ok ? succeed(printed) : done;
}

const root = path.join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(path.join(tmpdir(), 'still-head-analyse-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, content: string | Uint8Array): string {
  const target = path.join(folder, name);
  writeFileSync(target, content);
  return target;
}

/** Warms up, holds at the plateau and leaves it, a little uneven so that no probe looks frozen. */
function temperatureC(timeS: number): number {
  const unevenC = 0.0625 * (Math.floor(timeS / 5) % 3);
  if (timeS < 600) return 21 + timeS * 0.01 + unevenC;
  if (timeS < 680) return 27 + (timeS - 600) * 0.64 + unevenC;
  if (timeS < 2400) return 78.2 + unevenC;
  return Math.min(99, 78.2 + (timeS - 2400) * 0.03) + unevenC;
}
const rows = Array.from({ length: 1500 }, (_, index) => [index * 2, temperatureC(index * 2)]);
const point = `time_s,head_C\n${rows.map((row) => row.join(',')).join('\n')}\n`;
const options = ['--pressure-kpa', '101.3', '--charge-ml', '350', '--charge-abv', '9'];

describe('npm run analyse', () => {
  test('prints one JSON object in the shape of the verdicts and nothing else', () => {
    const script = path.join(root, 'scripts', 'analyse.ts');
    const args = ['--import', 'tsx', script, file('point.csv', point), ...options];
    const run = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
    const verdicts = printedVerdictsSchema.parse(JSON.parse(run.stdout));
    expect({ status: run.status, stderr: run.stderr }).toEqual({ status: 0, stderr: '' });
    expect(verdicts.alarms.map(({ alarm }) => alarm)).toContain('plateau-departure');
    expect(verdicts.stages.map(({ stage }) => stage)).toEqual([
      'warm-up',
      'first-fraction',
      'main-fraction',
      'tail',
    ]);
  });

  test('ends bad input with a plain sentence, exit code 2 and no stack', () => {
    const script = path.join(root, 'scripts', 'analyse.ts');
    const args = ['--import', 'tsx', script, '/nowhere.csv'];
    const run = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
    expect({ status: run.status, stdout: run.stdout, stderr: run.stderr }).toEqual({
      status: 2,
      stdout: '',
      stderr: 'There is no file "/nowhere.csv".\n',
    });
  });

  test('prints the answer before the pack, so that a place that cannot be written loses nothing', async () => {
    const plain = file('plain.txt', 'No folder.');
    // In /proc nobody can add a folder, and Node's recursive making would never come back.
    const places = [plain, path.join(plain, 'x'), ...(existsSync('/proc/self') ? ['/proc/x'] : [])];
    const curve = file('kept.csv', point);
    for (const place of places) {
      const printed: string[] = [];
      const done = await runAnalysis([curve, ...options, '--out', place], (json) =>
        printed.push(json),
      );
      expect(done).toEqual({
        ok: false,
        error: expect.stringMatching(/^"[^"\n]+" can't be written: [^\n]+$/),
      });
      expect(
        printed.map((json) => printedVerdictsSchema.safeParse(JSON.parse(json)).success),
      ).toEqual([true]);
    }
  });

  test('ends what nobody expected in one sentence, without a stack', async () => {
    const done = await runAnalysis([file('fine.csv', 'time_s,head_C\n0,20\n1,21\n')], () => {
      throw new Error('the paper is out');
    });
    expect(done).toEqual({
      ok: false,
      error: 'The analysis was broken off by something unexpected: the paper is out',
    });
    expect(await analysed([`${'x'.repeat(5000)}.csv`])).toEqual({
      ok: false,
      error: expect.stringMatching(/^The analysis was broken off[^\n]+ENAMETOOLONG[^\n]+$/),
    });
  });

  test('writes the export pack, whose readings analysed again give the same verdicts', async () => {
    const out = path.join(folder, 'out');
    const first = await analysed([file('again.csv', point), ...options, '--out', out]);
    expect(readdirSync(out).sort()).toEqual([
      'README.txt',
      'analysis.json',
      'data',
      'data-semicolon',
      'datapackage.json',
      'figures',
      'marking',
      'notebooks',
      'report.docx',
      'report.pdf',
      'settings',
      'workbook.xlsx',
      'worksheets',
    ]);
    const written = readFileSync(path.join(out, 'analysis.json'), 'utf8');
    expect(first).toEqual({ ok: true, value: written });
    for (const dialect of ['data', 'data-semicolon']) {
      const again = path.join(out, dialect, 'raw', 'again.csv');
      expect(await analysed([again, ...options])).toEqual(first);
    }
  });

  test('compares several files in one object and one pack, with what was measured after a run', async () => {
    const out = path.join(folder, 'several');
    const both = [file('first.csv', point), file('second.csv', point)];
    const answer = await analysed([...both, ...options, '--out', out]);
    const { runs } = JSON.parse(answer.ok ? answer.value : '{}');
    expect(runs.map((run: { file: string }) => path.basename(run.file))).toEqual([
      'first.csv',
      'second.csv',
    ]);
    expect(readdirSync(path.join(out, 'data', 'raw')).sort()).toEqual(['first.csv', 'second.csv']);
    expect(readdirSync(path.join(out, 'figures'))).toContain('runs-over-one-another.svg');

    const exactly = (value: number) => ({ value, standardUncertainty: 0.1 });
    const cut = {
      number: 1,
      amount: { by: 'volume', volumeMl: exactly(25), temperatureC: exactly(20) },
      strength: { by: 'stated', strengthAbv: exactly(90) },
    };
    const books = file('books.json', JSON.stringify({ cuts: [cut] }));
    const booked = path.join(folder, 'booked');
    await analysed([both[0] ?? '', ...options, '--books', books, '--out', booked]);
    // 25 mL of 90 % vol of 350 mL of 9 % vol: 22.5/31.5 = 71.43 %.
    expect(readFileSync(path.join(booked, 'data', 'results.csv'), 'utf8')).toMatch(
      /first,ethanol: recovery,71\.42\d+,/,
    );
  });

  test('tells the lines it could not use among the problems', async () => {
    const run = await analysed([file('odd.csv', point.replace('\n4,', '\nfour,'))]);
    const { problems } = printedVerdictsSchema.parse(JSON.parse(run.ok ? run.value : ''));
    expect(problems).toEqual([
      { problem: 'Line 4 could not be used: "four" is no time.', fromS: 0, toS: 2998 },
    ]);
  });

  test('takes the pauses of a slow logger for its pace, even after two quick rows', async () => {
    const slow = rows.filter(([timeS = 0]) => timeS <= 2 || timeS % 60 === 0);
    const csv = `time_s,head_C\n0.5,21\n${slow
      .slice(1)
      .map((row) => row.join(','))
      .join('\n')}\n`;
    const run = await analysed([file('slow.csv', csv), ...options]);
    const { alarms } = printedVerdictsSchema.parse(JSON.parse(run.ok ? run.value : ''));
    expect(alarms.filter(({ alarm }) => alarm === 'probe-fault')).toEqual([]);
  });

  test('prints every alarm about the probe under one name, with its cause', async () => {
    const reads = (change: (timeS: number, valueC: number) => number | null) =>
      rows.flatMap(([timeS = 0, valueC = 0]) => {
        const changed = change(timeS, valueC);
        return changed === null ? [] : [`${timeS},${changed}`];
      });
    const printed = async (name: string, lines: readonly string[], pressureKPa = '101.3') => {
      const csv = file(name, `time_s,head_C\n${lines.join('\n')}\n`);
      const run = await analysed([csv, ...options.slice(2), '--pressure-kpa', pressureKPa]);
      const { alarms } = printedVerdictsSchema.parse(JSON.parse(run.ok ? run.value : ''));
      return alarms
        .filter(({ alarm }) => alarm === 'probe-fault')
        .map((record) => ({ ...record, because: '' }));
    };
    const expected = (cause: string, priority: string) => [
      {
        ...{ alarm: 'probe-fault', cause, priority, because: '', acknowledgedS: null },
        ...{ raisedS: expect.any(Number), clearedS: expect.toBeOneOf([null, expect.any(Number)]) },
      },
    ];
    const silent = reads((timeS, valueC) => (timeS > 1500 && timeS < 1700 ? null : valueC));
    expect(await printed('silent.csv', silent)).toEqual(expected('probe-lost', 'high'));
    const frozen = reads((timeS, valueC) => (timeS > 1500 ? 78.26 : valueC));
    expect(await printed('frozen.csv', frozen)).toEqual(expected('probe-implausible', 'high'));
    // Some 3 K below the azeotrope by a pressure that is not that of the place.
    const low = reads((timeS, valueC) => (timeS > 2390 ? null : valueC - 3));
    expect(await printed('low.csv', low, '104')).toEqual(expected('bulb-doubted', 'medium'));
  });

  test('says what it had to choose for the whole file among the problems', async () => {
    const run = await analysed([file('two.csv', 'time_s,T1,T2\n0,20,21\n1,20,21\n')]);
    const { problems } = printedVerdictsSchema.parse(JSON.parse(run.ok ? run.value : ''));
    expect(problems.map(({ problem }) => problem)).toEqual([
      expect.stringMatching(/^"T1" \(column 2\) was taken for the head .*--columns\.$/),
    ]);
  });

  test.each<[string, () => readonly string[], RegExp]>([
    ['no file named', () => [], /^Say which file/],
    ['books for two files', () => ['a.csv', 'b.csv', '--books', 'c.json'], /belongs to one run/],
    ['an empty file', () => [file('empty.csv', '')], /The file is empty/],
    ['a picture', () => [file('p.csv', Buffer.from([0x89, 0x50, 0, 0, 1, 2]))], /not text/],
    ['prose', () => [file('prose.csv', 'Dear all,\nit went well.\n')], /No time column/],
    ['a folder without a run', () => [folder], /holds no run/],
    ['a word for a number', () => ['x.csv', '--charge-ml', 'much'], /--charge-ml needs a number/],
    ['an impossible pressure', () => ['x.csv', '--pressure-kpa', '5'], /60 to 110 kPa, not 5\.$/],
    ['a negative pressure', () => ['x.csv', '--pressure-kpa', '-5'], /60 to 110 kPa, not -5\.$/],
    [
      'a pressure in another unit',
      () => ['x.csv', '--pressure-kpa', '1013'],
      /^--pressure-kpa: 1013 is not a pressure in kPa, but it would be one in hPa \(mbar\): 101\.3 kPa/,
    ],
    ['an unknown option', () => ['x.csv', '--fast'], /fast/],
    ['settings that are none', () => ['x.csv', '--settings', file('s.json', '{}')], /settings/],
  ])('refuses %s in a sentence', async (_, args, sentence) => {
    const run = await analysed(args());
    expect(run).toEqual({ ok: false, error: expect.stringMatching(sentence) });
  });
});
