import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer, startRecorder } from '#main';
import { fail, type LogBody } from '#shared-core';
import { createBacklog } from '../../../main/recorder/backlog.ts';
import { makeLogSure } from '../../../main/recorder/next-file.ts';
import { failingFiles } from '../support/failing-files.ts';
import { logHeader } from '../support/log-header.ts';
import { createManualTime, diskAtRest } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const header = logHeader();
const reading = (timeS: number): LogBody => ({ kind: 'readings', readings: [[timeS, 'head', 20]] });

/** The records of a log file, without what differs from disk to disk. */
async function recordsIn(folder: string, name: string) {
  const text = await readFile(path.join(folder, name), 'utf8');
  return text
    .split('\n')
    .slice(0, -1)
    .map((line): unknown => JSON.parse(line));
}

async function startedOn(files: FileLayer, backlog = createBacklog()) {
  const folder = await temporaryFolder();
  const time = createManualTime();
  const onStatus = () => undefined;
  const started = await startRecorder({ ...time, files, folder, header, onStatus, backlog });
  if (!started.ok) throw new Error(started.error.message);
  return { recorder: started.value, folder, time };
}

test('the end is written behind a sync of all before it, and synced itself', async () => {
  const disk = failingFiles(-1);
  const { recorder, folder } = await startedOn(disk.files);
  const before = disk.done().length;
  recorder.append(reading(1), 1, 'soon');
  expect(await recorder.close({ timeS: 2.5 })).toEqual({ ok: true });
  expect(disk.done().slice(before)).toEqual(['write', 'sizeBytes', 'sync', 'write', 'sync']);
  const records = await recordsIn(folder, 'run.jsonl');
  expect(records.slice(1)).toMatchObject([{ kind: 'readings' }, { kind: 'end' }]);
  const { seq, prev, monoS, wallMs, crc, ...end } = records[2] as Record<string, unknown>;
  expect([seq, end]).toEqual([2, { kind: 'end', timeS: 2.5, how: 'clean' }]);
  // Closed once, it has one end.
  expect(await recorder.close({ timeS: 9 })).toEqual({ ok: true });
  expect(await recordsIn(folder, 'run.jsonl')).toHaveLength(3);
});

test('an end behind what the disk does not take says so', async () => {
  let isBroken = false;
  const createAppend: FileLayer['createAppend'] = async (at) => {
    const opened = await nodeFileLayer.createAppend(at);
    if (!opened.ok) return opened;
    const failed = { kind: 'failed', path: at, message: 'EIO' } as const;
    const sync = async () => (isBroken ? fail(failed) : opened.value.sync());
    return { ok: true, value: { ...opened.value, sync } };
  };
  const { recorder, folder } = await startedOn({ ...nodeFileLayer, createAppend });
  isBroken = true;
  recorder.append(reading(1), 1, 'soon');
  expect(await recorder.close({ timeS: 2 })).toMatchObject({ ok: false });
  await diskAtRest();
  const ends = (await Promise.all((await readdir(folder)).map((name) => recordsIn(folder, name))))
    .flat()
    .filter((record) => JSON.stringify(record).includes('"kind":"end"'));
  expect(ends).toMatchObject([{ kind: 'end', timeS: 2, unsaved: true }]);
});

test('readings that found no room are told before the end', async () => {
  const { recorder, folder } = await startedOn(nodeFileLayer, createBacklog(1));
  for (const timeS of [1, 2, 3]) recorder.append(reading(timeS), timeS, 'soon');
  await recorder.close({ timeS: 4 });
  expect(await recordsIn(folder, 'run.jsonl')).toMatchObject([
    { kind: 'header' },
    { kind: 'readings' },
    { kind: 'dropped', timeS: 4, readings: 2, fromS: 2, toS: 3 },
    { kind: 'end', timeS: 4 },
  ]);
});

/** What two records that nobody surely saved become. */
async function madeSureOn(files: FileLayer) {
  const folder = await temporaryFolder();
  const { clock } = createManualTime();
  const unsure = [4, 5].map((seq) => ({
    stamp: { seq, monoS: seq, wallMs: seq },
    body: reading(seq),
  }));
  const made = await makeLogSure(
    { files, clock, folder, header },
    { lastSegment: 2, seq: 5, unsure },
  );
  return { made, folder };
}

test('what is unsure stands in a next file, and one more tells that it is on the disk', async () => {
  const disk = failingFiles(-1);
  const { made, folder } = await madeSureOn(disk.files);
  expect(made).toEqual({ ok: true });
  expect((await readdir(folder)).sort()).toEqual(['run-3.jsonl', 'run-4.jsonl']);
  expect([
    await recordsIn(folder, 'run-3.jsonl'),
    await recordsIn(folder, 'run-4.jsonl'),
  ]).toMatchObject([
    [
      { kind: 'segment', segment: 3, seq: 3, header },
      { kind: 'readings', seq: 4, monoS: 4 },
      { kind: 'readings', seq: 5, monoS: 5 },
    ],
    [{ kind: 'segment', segment: 4, seq: 5, header }],
  ]);
  // The second is begun when the first is on the disk.
  const once = ['createAppend', 'write', 'write', 'write', 'sync', 'syncFolder'];
  expect(disk.done()).toEqual([...once, 'createAppend', 'write', 'sync', 'syncFolder']);
  expect(disk.stillOpen()).toBe(0);
});

test('where the disk fails at any of it, that is told and neither file stays', async () => {
  for (let failAt = 0; failAt < 10; failAt += 1) {
    const disk = failingFiles(failAt);
    const { made, folder } = await madeSureOn(disk.files);
    expect([failAt, made]).toMatchObject([failAt, { ok: false, error: { kind: 'failed' } }]);
    await expect.poll(() => readdir(folder)).toEqual([]);
    expect(disk.stillOpen()).toBe(0);
  }
});
