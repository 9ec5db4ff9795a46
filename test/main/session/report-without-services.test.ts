import { readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { reportWithoutServices } from '#main';
import { problemReportSchema } from '../../../shared-core/contract/problem-report.ts';
import { ask, setUpSession, takeIn } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const app = { version: '0.1.0', modelVersion: '7', shell: 'command' } as const;

test('the report of a program that did not start tells why, and what lies in the folder, naming no run', async () => {
  const { session, runsFolder } = await setUpSession();
  await takeIn(session, 'time_s,head_c\n0,20\n1,21\n', {});
  const [run] = (await ask(session, 'runs/list', {})).runs;
  await session.close();
  await writeFile(path.join(runsFolder, 'known-probes.json'), '{"version":1,');
  const before = (await readdir(runsFolder)).sort();
  const report = await reportWithoutServices(app, runsFolder, 'the port 4000 is taken');
  expect(problemReportSchema.parse(report)).toMatchObject({
    program: app,
    folder: { mayWrite: false, runs: 1, doubtfulFiles: ['known-probes.json: not-understood'] },
    probe: null,
    ports: [],
    recording: null,
    recentProblems: [
      { what: 'the port 4000 is taken', times: 1, lastAtIso: expect.stringMatching(/Z$/) },
    ],
    window: null,
  });
  expect([report.runNames, run?.readings]).toEqual([undefined, 2]);
  expect((await readdir(runsFolder)).sort()).toEqual(before);
});

test('where there is no such folder the report says so, and makes none', async () => {
  const runsFolder = path.join(await temporaryFolder(), 'nowhere');
  expect(await reportWithoutServices(app, runsFolder, null)).toMatchObject({
    folder: { runs: null },
    recentProblems: [{ what: expect.stringMatching(/^runs: folder-/), times: 1 }],
  });
  await expect(readdir(runsFolder)).rejects.toThrow('ENOENT');
});
