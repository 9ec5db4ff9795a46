import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  createBacklog,
  emptyReport,
  type FileLayer,
  nodeFileLayer,
  readRunLog,
  segmentFile,
  segmentNumber,
  startRecorder,
} from '#main';
import { fail, type LogBody, type LogRecord, succeed } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { createManualTime, diskAtRest } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const header = logHeader();

const reading = (timeS: number): LogBody => ({
  kind: 'readings',
  readings: [[timeS, 'head', 20]],
});
const note = (timeS: number): LogBody => ({
  kind: 'mark',
  timeS,
  markId: 1,
  mark: { type: 'note', text: 'seen' },
});

async function recordsIn(folder: string): Promise<readonly LogRecord[]> {
  const found: LogRecord[] = [];
  for await (const records of readRunLog(nodeFileLayer, folder, emptyReport()))
    found.push(...records);
  return found;
}

async function setUp(mostPending: number, faults: Partial<FileLayer> = {}) {
  const { clock, scheduler, pass } = createManualTime();
  const folder = await temporaryFolder();
  const files = { ...nodeFileLayer, ...faults };
  const backlog = createBacklog(mostPending);
  const onStatus = () => undefined;
  const started = await startRecorder({
    files,
    clock,
    scheduler,
    folder,
    header,
    onStatus,
    backlog,
  });
  if (!started.ok) throw new Error(started.error.message);
  return { recorder: started.value, folder, pass };
}

describe('startRecorder', () => {
  test('sends every record on its way to the file before it answers, and waits for no sync', async () => {
    const { recorder, folder } = await setUp(100);
    for (let second = 1; second <= 3; second += 1) recorder.append(reading(second), second, 'soon');
    await diskAtRest();
    expect((await recordsIn(folder)).map(({ body }) => body.kind)).toEqual([
      'header',
      'readings',
      'readings',
      'readings',
    ]);
    expect(recorder.status().savedToS).toBe(0);
    await recorder.close();
    expect(recorder.status().savedToS).toBe(3);
  });

  test('syncs at once when asked to', async () => {
    const { recorder } = await setUp(100);
    recorder.append(note(1), 1, 'now');
    await expect.poll(() => recorder.status().savedToS).toBe(1);
    await recorder.close();
  });

  test('calls nothing saved that was heard late and is not on the disk, however much newer is', async () => {
    let takesNothing = false;
    const { recorder, pass } = await setUp(100, {
      async createAppend(target) {
        const full = { kind: 'full', path: target, message: 'ENOSPC' } as const;
        if (takesNothing) return fail(full);
        const file = await nodeFileLayer.createAppend(target);
        if (!file.ok) return file;
        const write: typeof file.value.write = (bytes) =>
          takesNothing ? fail(full) : file.value.write(bytes);
        return succeed({ ...file.value, write });
      },
    });
    recorder.append(note(20), 20, 'now');
    await expect.poll(() => recorder.status().savedToS).toBe(20);
    takesNothing = true;
    recorder.append(reading(19.5), 20.5, 'soon');
    expect(recorder.status()).toMatchObject({ state: 'failed', savedToS: 19.5 });
    takesNothing = false;
    await pass(3);
    await expect.poll(() => recorder.status().savedToS).toBe(20.5);
    await recorder.close();
  });

  test('takes a flood of two hundred thousand readings in one piece', async () => {
    const { recorder } = await setUp(1_000_000);
    const readings = Array.from({ length: 200_000 }, () => [3, 'head', 20] as const);
    recorder.append({ kind: 'readings', readings: [...readings] }, 4, 'now');
    await expect.poll(() => recorder.status().savedToS).toBe(4);
    await recorder.close();
  });

  test('drops and counts readings, but never marks, when the disk takes nothing for too long', async () => {
    let isFull = false;
    const full = (target: string) =>
      fail({ kind: 'full', path: target, message: 'ENOSPC' } as const);
    const { recorder, folder, pass } = await setUp(5, {
      async createAppend(target) {
        if (isFull) return full(target);
        const file = await nodeFileLayer.createAppend(target);
        if (!file.ok) return file;
        const write: typeof file.value.write = (bytes) =>
          isFull ? full(target) : file.value.write(bytes);
        return succeed({ ...file.value, write });
      },
    });
    isFull = true;
    for (let second = 1; second <= 8; second += 1) recorder.append(reading(second), second, 'soon');
    recorder.append(note(9), 9, 'now');
    expect(recorder.status().lostReadings).toBe(3);
    await pass(3);
    isFull = false;
    await pass(3);
    await expect.poll(() => recorder.status().savedToS).toBe(9);
    recorder.append(reading(10), 10, 'soon');
    expect(await recorder.close()).toEqual({ ok: true, value: undefined });
    const bodies = (await recordsIn(folder)).map(({ body }) => body);
    expect(bodies.filter(({ kind }) => kind === 'readings')).toEqual(
      [1, 2, 3, 4, 5, 10].map(reading),
    );
    expect(bodies.filter(({ kind }) => kind === 'dropped')).toEqual([
      { kind: 'dropped', timeS: 9, readings: 3, fromS: 6, toS: 8, where: 'disk' },
    ]);
    expect(bodies.filter(({ kind }) => kind === 'mark')).toEqual([note(9)]);
  });

  test('answers that not everything is saved when the disk fails to the end', async () => {
    let isBroken = false;
    const broken = { kind: 'failed', path: '', message: 'EIO' } as const;
    const { recorder, folder } = await setUp(100, {
      async createAppend(target) {
        const file = isBroken ? fail(broken) : await nodeFileLayer.createAppend(target);
        if (!file.ok) return file;
        return succeed({
          ...file.value,
          sync: async () => (isBroken ? fail(broken) : file.value.sync()),
        });
      },
    });
    isBroken = true;
    recorder.append(reading(1), 1, 'now');
    expect(await recorder.close()).toEqual({ ok: false, error: broken });
    expect(recorder.unsaved().map(({ body }) => body)).toEqual([reading(1)]);
    expect(await readdir(folder)).toEqual(['run.jsonl']);
  });
});

describe('a closed recorder', () => {
  test('takes no record and begins no file, while it closes and after', async () => {
    const { recorder, folder, pass } = await setUp(100);
    recorder.append(reading(1), 1, 'soon');
    const closing = recorder.close();
    recorder.append(note(2), 2, 'now');
    expect(await closing).toEqual({ ok: true, value: undefined });
    recorder.append(note(3), 3, 'now');
    recorder.append(reading(4), 4, 'soon');
    await pass(10);
    expect((await recordsIn(folder)).map(({ body }) => body.kind)).toEqual(['header', 'readings']);
    expect(await readdir(folder)).toEqual(['run.jsonl']);
    expect({ status: recorder.status(), unsaved: recorder.unsaved() }).toEqual({
      status: { state: 'recording', savedToS: 1, problem: null, lostReadings: 0 },
      unsaved: [],
    });
  });

  test('gives everybody who closes it the same answer, and begins no file when the disk works again', async () => {
    let isBroken = false;
    const broken = { kind: 'failed', path: '', message: 'EIO' } as const;
    const { recorder, folder, pass } = await setUp(100, {
      async createAppend(target) {
        const file = isBroken ? fail(broken) : await nodeFileLayer.createAppend(target);
        if (!file.ok) return file;
        const write: typeof file.value.write = (bytes) =>
          isBroken ? fail(broken) : file.value.write(bytes);
        return succeed({ ...file.value, write });
      },
    });
    isBroken = true;
    recorder.append(reading(1), 1, 'now');
    const answers = await Promise.all([recorder.close(), recorder.close()]);
    expect(answers).toEqual([fail(broken), fail(broken)]);
    isBroken = false;
    await pass(10);
    expect(await recorder.close()).toEqual(fail(broken));
    expect(await readdir(folder)).toEqual(['run.jsonl']);
  });
});

describe('segmentNumber', () => {
  test('knows the log files of a run from all others', () => {
    expect([1, 2, 10].map(segmentFile)).toEqual(['run.jsonl', 'run-2.jsonl', 'run-10.jsonl']);
    const others = [
      'run-0.jsonl',
      'run-1.jsonl',
      'run-02.jsonl',
      'run-.jsonl',
      'labels.jsonl',
      'run.jsonl.torn-at-5',
      'rerun.jsonl',
    ];
    expect(others.map(segmentNumber)).toEqual(others.map(() => undefined));
    expect([1, 2, 10].map((number) => segmentNumber(path.basename(segmentFile(number))))).toEqual([
      1, 2, 10,
    ]);
  });
});
