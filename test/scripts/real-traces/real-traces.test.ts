import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { judgeTrace } from '../../../scripts/real-traces/judge-trace.ts';
import { placeTrace } from '../../../scripts/real-traces/place-trace.ts';
import { traceTable } from '../../../scripts/real-traces/trace-table.ts';
import { traceTruth } from '../../../scripts/real-traces/trace-truth.ts';
import { runCommand } from '../../../scripts/testing/run-command.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';

const folder = new URL('../../reference/real-traces/', import.meta.url).pathname;

/** Two straight lines that meet, with a little of what a probe adds. */
function bentSeries(bendS: number, kelvinPerS: number): string {
  const rows = Array.from({ length: 3600 }, (_, timeS) => {
    const rise = Math.max(0, timeS - bendS) * kelvinPerS;
    return `${timeS},${(56.2 + rise + 0.02 * Math.sin(timeS * 7)).toFixed(3)}`;
  });
  return `time_s,head_C\n${rows.join('\n')}\n`;
}

test('a series is set on the plateau behind a warm-up, and bend and limit are found where they were put', () => {
  const placed = placeTrace(bentSeries(2000, 0.002), 78.45);
  if (placed === null) throw new Error('the series was not read');
  expect(placed.inputs).toHaveLength(900 + 3600);
  const truth = traceTruth(placed, 78.45, 80.45);
  expect(Math.abs((truth.bendS ?? 0) - 2900)).toBeLessThan(20);
  expect(Math.abs((truth.limitS ?? 0) - 3900)).toBeLessThan(20);
});

test('a series that never bends has neither bend nor limit, and a file without a head is told of', () => {
  const placed = placeTrace(bentSeries(5000, 0.002), 78.45);
  if (placed === null) throw new Error('the series was not read');
  expect(traceTruth(placed, 78.45, 80.45)).toEqual({ bendS: null, limitS: null });
  expect(placeTrace('time_s,weight_g\n0,1\n1,2\n', 78.45)).toBeNull();
  expect(traceTable([{ name: 'scale.csv', judgement: null }]).at(1)).toContain(
    'no head temperature',
  );
});

test('the table of a real departure gives its stages, its call against the limit and how the forecast held', () => {
  const text = readFileSync(`${folder}plateau-then-departure-1.csv`, 'utf8');
  const judgement = judgeTrace(text, 80);
  expect(judgement?.stages.map(({ stage }) => stage)).toEqual([
    'warm-up',
    'first-fraction',
    'main-fraction',
    'tail',
  ]);
  expect(judgement?.alarmsPerHour).toBe(0);
  expect(judgement?.callsS).toHaveLength(1);
  const [, row, all] = traceTable([{ name: 'plateau-then-departure-1.csv', judgement }]);
  expect(row).toMatch(/tail 3\d .* s (before|after) the limit/);
  expect(all).toMatch(/^1 traces; .* % of \d+$/);
});

test('a folder without series is asked about in a sentence', async () => {
  const { code, output } = await runCommand(
    process.execPath,
    ['scripts/run.mjs', 'real-traces', 'scripts/checks'],
    { cwd: projectRoot },
  );
  expect(code).toBe(2);
  expect(output).toContain('There is no .csv file');
});
