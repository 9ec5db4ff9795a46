import { expect, test } from 'vitest';
import { distillationsOrder } from '#main';
import { createMonitor } from '#shared-core';
import { runsTable } from '../../../main/export/pack/runs-table.ts';
import { footerOf } from '../../../shared-core/report/report-of.ts';
import { pearPackRun } from './support/pear-pack.ts';

test('a pack says which program and model judged its runs, and which recorded them, where an older one did', async () => {
  const { run } = pearPackRun();
  const older = { ...run, appVersion: '0.0.1', modelVersion: '12' };
  const { work } = distillationsOrder({
    runs: [{ run: older }],
    createMonitor,
    madeBy: { version: '0.1.0', modelVersion: '17' },
    createdMs: 0,
  });
  const studies = await work(() => undefined);
  const table = runsTable(studies);
  const [row = []] = [...table.rows()];
  const cell = (name: string) => row[table.fields.findIndex((field) => field.name === name)];
  expect([cell('monitor_model'), cell('recorded_with_model')]).toEqual(['17', '12']);
  expect(footerOf(studies)).toMatch(/^Still Head Monitor 0\.1\.0 · monitor model 17 · /);
});
