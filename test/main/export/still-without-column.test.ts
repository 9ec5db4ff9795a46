import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { nodeFileLayer, writePack } from '#main';
import {
  createMonitor,
  exerciseLevels,
  planRun,
  readReadingsCsv,
  rigAsKnown,
  runKind,
  studyRun,
} from '#shared-core';
import { planSentence } from '../../../renderer/plan/plan-words.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { runSettingsSchema } from '../../../shared-core/run/run-settings.ts';
import { carefulRun } from '../../shared-core/exercises/support/varied-runs.ts';
import { packRunOf } from './support/pack-run-of.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'still-head-simple-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = carefulRun(
  {
    rig: 'simpleHead',
    volumeMl: 250,
    abv: 40,
    pressureKPa: 100,
    limitAbv: 60,
    easedW: 80,
    lateS: 200,
  },
  1,
);
const { settings } = run;

test('a still without a column, set as 0 plates, goes through settings, plan, monitor, report, questions and pack', {
  timeout: 120_000,
}, async () => {
  expect(runSettingsSchema.parse(settings).rig.plates).toBe(0);
  expect(runKind(settings)).toBe('simple');

  const { rig, uncertainty } = rigAsKnown(settings.rig);
  const plan = planRun({
    charge: { volumeMl: 250, strengthAbv: 9 },
    rig,
    uncertainty,
    pressureKPa: 100,
    leastStrengthAbv: 80,
    runs: 8,
  });
  expect(planSentence(plan, 80, '.')).toMatch(
    /no column on the pot\. Any of these would help: .*a column of \d+ plates/,
  );

  const monitor = createMonitor(settings);
  let forecasts = 0;
  for (const input of run.inputs) {
    const end = monitor.push(input).forecast?.mainFractionEndS;
    if (end == null) continue;
    forecasts += 1;
    expect([end.low, end.value, end.high].every(Number.isFinite)).toBe(true);
  }
  expect(forecasts).toBeGreaterThan(100);

  const study = studyRun(run);
  for (const level of exerciseLevels) {
    for (const exercise of exercisesOf(study, level)) {
      expect(JSON.stringify(exercise)).not.toMatch(/NaN|Infinity|gain of the column/i);
    }
  }

  const pack = await writePack({
    runs: [packRunOf(run)],
    createMonitor,
    madeBy: { version: '0.1.0', modelVersion: '1' },
    createdMs: 0,
    outDir: folder,
    files: nodeFileLayer,
  });
  if (!pack.ok) throw new Error(pack.error.message);
  const texts = pack.value.filter((name) => /\.(csv|json|md|txt|svg)$/.test(name));
  for (const name of texts) {
    expect(readFileSync(path.join(folder, name), 'utf8'), name).not.toMatch(/NaN|Infinity/);
  }
  const raw = pack.value.find((name) => /raw.*\.csv$/.test(name) && !/semicolon/.test(name));
  const table = readReadingsCsv(readFileSync(path.join(folder, raw ?? ''), 'utf8'));
  expect(table.ok).toBe(true);
});
