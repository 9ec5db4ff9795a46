import { appendFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkRuns, createRunLibrary, nodeFileLayer, type RunCheck } from '#main';
import { encodeRecord, firstPreviousChecksum, type LogBody } from '#shared-core';
import { runProblem } from '../../../main/run-library/run-problem.ts';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runId = '20250314T101500Z';
const residue = (massG: number) => ({ type: 'liquid-mass', liquid: 'residue', massG }) as const;

/** A library with one run: two readings, a mark with the number 4, and its end at 3 s. */
async function oneRun(mayWrite = true) {
  const runsFolder = await temporaryFolder();
  const bodies: readonly LogBody[] = [
    { kind: 'header', header: logHeader(runId) },
    { kind: 'readings', readings: [[0.5, 'head', 20]] },
    { kind: 'mark', timeS: 1, markId: 4, mark: { type: 'heat-on' } },
    { kind: 'readings', readings: [[2, 'head', 21]] },
    { kind: 'end', timeS: 3, how: 'clean' },
  ];
  let previous = firstPreviousChecksum;
  let text = '';
  for (const [seq, body] of bodies.entries()) {
    const { line, checksum } = encodeRecord(body, { seq, monoS: seq, wallMs: seq }, previous);
    previous = checksum;
    text += line;
  }
  const folder = path.join(runsFolder, runId);
  await mkdir(folder);
  await writeFile(path.join(folder, 'run.jsonl'), text, 'latin1');
  const { clock } = createManualTime();
  const open = () =>
    createRunLibrary({ files: nodeFileLayer, clock, runsFolder, mayWrite: () => mayWrite });
  const labels = () => readFile(path.join(folder, 'labels.jsonl'), 'utf8');
  return { runsFolder, folder, text, open, library: open(), labels };
}

const lateMarksOf = async ({ library }: Awaited<ReturnType<typeof oneRun>>) => {
  const page = await library.page(runId, 0);
  return page.ok ? page.value.lateMarks : page.error;
};

describe('what is added to a run afterwards', () => {
  test('is kept beside the log, which stays as it was closed, and is there for the next program', async () => {
    const run = await oneRun();
    const renamed = await run.library.rename(runId, { name: 'Pear, second', notes: 'cloudy' });
    expect(renamed).toMatchObject({ ok: true, value: { name: 'Pear, second', notes: 'cloudy' } });
    await run.library.rename(runId, { name: 'Pear, third', notes: '' });
    expect(await run.open().summary(runId)).toMatchObject({
      ok: true,
      value: { summary: { name: 'Pear, third', notes: '', readings: 2, durationS: 3 } },
    });
    expect(await readFile(path.join(run.folder, 'run.jsonl'), 'latin1')).toBe(run.text);
    // One record after the other, none in the place of another.
    const seqs = (await run.labels())
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line).seq);
    expect(seqs).toEqual([1, 2]);
  });

  test('goes on behind a record that was torn off when the power went', async () => {
    const run = await oneRun();
    await run.library.rename(runId, { name: 'Pear, second', notes: '' });
    await appendFile(path.join(run.folder, 'labels.jsonl'), '{"torn":');
    expect((await run.library.rename(runId, { name: 'Pear, third', notes: '' })).ok).toBe(true);
    expect(await run.open().summary(runId)).toMatchObject({
      value: { summary: { name: 'Pear, third' } },
    });
    expect(await run.labels()).not.toContain('torn');
  });

  test('are measurements of liquids, numbered on from the run’s own marks and standing at its end; each may be taken back', async () => {
    const run = await oneRun();
    const { library } = run;
    expect([
      await library.book(runId, residue(310)),
      await library.book(runId, residue(305)),
      await library.book(runId, { type: 'mark-withdrawn', withdrawnMarkId: 5 }),
    ]).toEqual([5, 6, 7].map((value) => ({ ok: true, value })));
    expect(await lateMarksOf(run)).toEqual([
      { kind: 'mark', markId: 5, mark: residue(310), timeS: 3 },
      { kind: 'mark', markId: 6, mark: residue(305), timeS: 3 },
      { kind: 'mark', markId: 7, mark: { type: 'mark-withdrawn', withdrawnMarkId: 5 }, timeS: 3 },
    ]);
  });

  test('are no other marks, nor may those that the monitor saw be taken back', async () => {
    const run = await oneRun();
    const refused = {
      ok: false,
      error: {
        kind: 'request-invalid',
        message: 'after the run only measurements of liquids can be added or withdrawn',
      },
    };
    expect([
      await run.library.book(runId, { type: 'heat-off' }),
      await run.library.book(runId, { type: 'mark-withdrawn', withdrawnMarkId: 4 }),
      await run.library.book(runId, { type: 'mark-withdrawn', withdrawnMarkId: 9 }),
    ]).toEqual([refused, refused, refused]);
    expect(await lateMarksOf(run)).toEqual([]);
  });

  test('is refused while another program has the folder, and of a run that is not there', async () => {
    const { library, runsFolder } = await oneRun(false);
    const inUse = { ok: false, error: { kind: 'folder-in-use', path: runsFolder } };
    expect([
      await library.rename(runId, { name: 'Pear', notes: '' }),
      await library.book(runId, residue(310)),
      await library.trash(runId),
    ]).toEqual([inUse, inUse, inUse]);
    const writing = await oneRun();
    const notThere = (id: string) => ({ ok: false, error: { kind: 'run-not-found', runId: id } });
    for (const id of ['20200101T000000Z', '../outside', 'trash'])
      expect([
        await writing.library.rename(id, { name: 'Pear', notes: '' }),
        await writing.library.book(id, residue(310)),
        await writing.library.trash(id),
      ]).toEqual([notThere(id), notThere(id), notThere(id)]);
  });
});

test('the torn end of a run is cut when it is recovered, and kept beside it to the byte', async () => {
  const { runsFolder, folder, text, library } = await oneRun();
  const torn = `{"seq":5,"torn":"${'x'.repeat(3000)}`;
  await appendFile(path.join(folder, 'run.jsonl'), torn);
  expect(await library.summary(runId)).toMatchObject({ value: { hasTornEnd: true } });
  await library.recoverAll();
  expect(await library.summary(runId)).toMatchObject({ value: { hasTornEnd: false } });
  expect([
    await readFile(path.join(folder, 'run.jsonl'), 'latin1'),
    await readFile(path.join(folder, `run.jsonl.torn-at-${text.length}`), 'latin1'),
  ]).toEqual([text, torn]);
  const checks: RunCheck[] = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  expect(checks).toMatchObject([{ runId, state: 'whole', readings: 2, problem: null }]);
});

test('a check of a folder that is not there finds no run, and of a run without a header says so', async () => {
  const { runsFolder, folder, text } = await oneRun();
  const checked = async (where: string) => {
    const found: (readonly [string, string | null])[] = [];
    for await (const { state, problem } of checkRuns(nodeFileLayer, where))
      found.push([state, problem]);
    return found;
  };
  expect(await checked(path.join(runsFolder, 'nowhere'))).toEqual([]);
  await writeFile(path.join(folder, 'run.jsonl'), text.slice(text.indexOf('\n') + 1), 'latin1');
  expect(await checked(runsFolder)).toEqual([
    ['unreadable', 'Its header is damaged or was written by a newer version of this program.'],
  ]);
});

test('a problem with a run’s files is told of the run where it is the run’s, and as it is where it is the disk’s', () => {
  const told = (kind: 'missing' | 'failed' | 'full') =>
    runProblem('a', { kind, path: '/runs/a', message: 'EIO' });
  expect([told('missing'), told('failed'), told('full')]).toEqual([
    { kind: 'run-not-found', runId: 'a' },
    { kind: 'run-unreadable', runId: 'a', message: 'EIO' },
    { kind: 'disk-full', path: '/runs/a' },
  ]);
});
