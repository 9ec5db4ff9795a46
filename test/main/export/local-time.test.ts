import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { nodeFileLayer, writePack } from '#main';
import { studyRun } from '#shared-core';
import { localIso } from '../../../main/run-library/local-iso.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';
import { packRequest } from './support/pear-pack.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'still-head-local-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const read = (name: string) => readFileSync(path.join(folder, name), 'utf8');

beforeAll(async () => {
  const pack = await writePack({ ...packRequest(), outDir: folder, files: nodeFileLayer });
  if (!pack.ok) throw new Error(pack.error.message);
}, 300_000);

test('tables of a pack have the time of the computer’s zone, with its offset', () => {
  const began = localIso('2026-03-18T09:15:00.000Z');
  expect(read('data/runs.csv')).toContain(`,${began},`);
  for (const dialect of ['data', 'data-semicolon']) {
    const [name = ''] = readdirSync(path.join(folder, dialect, 'processed'));
    const [titles = '', first = ''] = read(`${dialect}/processed/${name}`).split(/\r?\n/);
    const column = titles.split(/[;,]/).indexOf('time_local');
    expect(first.split(dialect === 'data' ? ',' : ';')[column]?.slice(0, 16)).toBe(
      began.slice(0, 16).replace('T', ' '),
    );
  }
  expect(read('README.txt')).toMatch(
    /time_local: The same by the computer’s clock, UTC[+−]\d\d:\d\d/,
  );
});

test('nothing that a person reads names UTC without an offset', () => {
  const { run } = pearRun();
  const study = studyRun({ ...run, startedAtIso: '2026-03-18T10:15:00.000+01:00' });
  const text = JSON.stringify(reportOf([study]));
  expect(text).toContain('2026-03-18 10:15 (UTC+01:00)');
  for (const words of [text, read('README.txt')]) expect(words).not.toMatch(/UTC(?![+−]\d\d:\d\d)/);
});
