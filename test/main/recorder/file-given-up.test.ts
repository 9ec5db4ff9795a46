import { describe, expect, test } from 'vitest';
import {
  continueRecorder,
  createLogWriter,
  createRecordMemory,
  type FileLayer,
  type FileProblem,
  nodeFileLayer,
  type RecorderStatus,
  startRecorder,
} from '#main';
import { fail, type LogBody, succeed } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';

const broken: FileProblem = { kind: 'failed', path: 'disk', message: 'The cable came off.' };
const note = (timeS: number): LogBody => ({
  kind: 'mark',
  timeS,
  markId: 1,
  mark: { type: 'note', text: 'ä' },
});

/** A disk in memory that tells what was done to it, and fails as it is told to. */
function scriptedDisk() {
  const did: string[] = [];
  const written = new Map<string, string>();
  const disk = {
    opens: true,
    openTakes: async () => undefined,
    writes: (_name: string, _count: number): 'yes' | 'no' | 'half' => 'yes',
    syncs: (_name: string) => true,
    syncTakes: async () => undefined,
    syncsFolder: true,
  };
  const open = async (file: string) => {
    const name = file.split('/').at(-1) ?? '';
    did.push(`open ${name}`);
    await disk.openTakes();
    if (!disk.opens) return fail(broken);
    let count = 0;
    return succeed({
      write(bytes: Uint8Array) {
        count += 1;
        const how = disk.writes(name, count);
        if (how === 'no') return fail(broken);
        const taken = how === 'half' ? bytes.length >> 1 : bytes.length;
        const text = Buffer.from(bytes.subarray(0, taken)).toString('latin1');
        written.set(name, (written.get(name) ?? '') + text);
        return succeed(taken);
      },
      async sync() {
        did.push(`sync ${name}`);
        await disk.syncTakes();
        return disk.syncs(name) ? succeed(undefined) : fail(broken);
      },
      async close() {
        did.push(`close ${name}`);
      },
    });
  };
  const files: FileLayer = {
    ...nodeFileLayer,
    createAppend: open,
    openAppend: open,
    sizeBytes: async (file) => succeed(written.get(file.split('/').at(-1) ?? '')?.length ?? 0),
    list: async () => succeed([...written.keys()].map((name) => ({ name, isFolder: false }))),
    async syncFolder() {
      did.push('sync folder');
      return disk.syncsFolder ? succeed(undefined) : fail(broken);
    },
    async remove(file) {
      did.push(`remove ${file.split('/').at(-1)}`);
      return succeed(undefined);
    },
  };
  const take = () => did.splice(0);
  return { disk, files, take, written };
}

/** Holds what the disk is asked, until it is woken. */
function hold(
  disk: Record<'openTakes' | 'syncTakes', () => Promise<undefined>>,
  act: 'openTakes' | 'syncTakes',
): () => void {
  const asleep: (() => void)[] = [];
  disk[act] = () => new Promise((resolve) => asleep.push(() => resolve(undefined)));
  return () => {
    disk[act] = async () => undefined;
    for (const wake of asleep) wake();
  };
}

function setUp() {
  const time = createManualTime();
  const scripted = scriptedDisk();
  const told: RecorderStatus[] = [];
  const setup = {
    ...time,
    files: scripted.files,
    folder: '/runs/one',
    header: logHeader(),
    onStatus: (status: RecorderStatus) => void told.push(status),
  };
  return { ...scripted, ...time, setup, told };
}

async function started() {
  const world = setUp();
  const recorder = await startRecorder(world.setup);
  if (!recorder.ok) throw new Error(recorder.error.message);
  world.take();
  return { ...world, recorder: recorder.value };
}

describe('a run that cannot be begun', () => {
  test('is told why, and no file is left open', async () => {
    const unopened = setUp();
    unopened.disk.opens = false;
    expect([await startRecorder(unopened.setup), unopened.take()]).toEqual([
      fail(broken),
      ['open run.jsonl'],
    ]);
    for (const what of ['file', 'folder']) {
      const { disk, setup, take } = setUp();
      if (what === 'file') disk.syncs = () => false;
      else disk.syncsFolder = false;
      expect(await startRecorder(setup)).toEqual(fail(broken));
      expect(take().at(-1)).toBe('close run.jsonl');
    }
  });

  test('leaves no file behind whose first record was not taken', async () => {
    const { disk, setup, take } = setUp();
    disk.writes = () => 'no';
    expect(await startRecorder(setup)).toEqual(fail(broken));
    await new Promise(setImmediate);
    expect(take()).toEqual(['open run.jsonl', 'close run.jsonl', 'remove run.jsonl']);
  });
});

test('a disk that neither takes nor refuses what was written is told of after ten seconds, and what it then takes is saved', async () => {
  const { disk, recorder, pass, told } = await started();
  const wake = hold(disk, 'syncTakes');
  recorder.append(note(1), 1, 'now');
  await pass(9);
  recorder.append(note(9), 9, 'soon');
  expect([recorder.status().problem, recorder.status().savedToS]).toEqual([null, 0]);
  await pass(2);
  const held = { kind: 'held', path: '/runs/one', message: 'No answer for 10 s.' };
  expect(told.at(-1)).toMatchObject({ state: 'recording', savedToS: 0, problem: held });
  wake();
  await pass(1);
  expect(told.at(-1)).toMatchObject({ state: 'recording', savedToS: 9, problem: null });
});

test('files that were deleted while the disk took nothing are written again once it does', async () => {
  const { disk, recorder, pass, written } = await started();
  recorder.append(note(1), 1, 'now');
  await pass(1);
  disk.opens = false;
  disk.syncs = () => false;
  recorder.append(note(2), 2, 'now');
  await pass(1);
  written.clear();
  disk.opens = true;
  disk.syncs = () => true;
  await pass(3);
  const kinds = (written.get('run.jsonl') ?? '')
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line).kind);
  expect(kinds).toEqual(['header', 'mark', 'mark']);
  expect(recorder.status()).toMatchObject({ state: 'recording', savedToS: 2, problem: null });
});

test('a run that cannot be gone on with is told why, and no file is left open', async () => {
  const end = { lastSegment: 3, seq: 9, timeS: 60, unsure: [] };
  const { disk, setup, take } = setUp();
  disk.opens = false;
  expect([await continueRecorder(setup, end, createRecordMemory()), take()]).toEqual([
    fail(broken),
    ['open run-4.jsonl'],
  ]);
  disk.opens = true;
  disk.syncs = () => false;
  expect([await continueRecorder(setup, end, createRecordMemory()), take()]).toEqual([
    fail(broken),
    ['open run-4.jsonl', 'sync run-4.jsonl', 'close run-4.jsonl', 'remove run-4.jsonl'],
  ]);
});

test('a write that took only a part of the bytes is a full disk, and says how many it took', async () => {
  const { disk, files, written } = scriptedDisk();
  const made = await createLogWriter(files, '/runs/one/run.jsonl');
  if (!made.ok) throw new Error(made.error.message);
  disk.writes = (_name, count) => (count === 1 ? 'half' : 'yes');
  const stamp = { seq: 1, monoS: 1, wallMs: 1 };
  const answer = made.value.write(note(1), stamp);
  const taken = written.get('run.jsonl')?.length ?? 0;
  const whole = made.value.write(note(1), stamp);
  const bytes = (written.get('run.jsonl')?.length ?? 0) - taken;
  expect([answer, whole]).toEqual([
    fail({
      kind: 'full',
      path: '/runs/one/run.jsonl',
      message: `Only ${taken} of ${bytes} bytes were taken.`,
    }),
    succeed(undefined),
  ]);
});

describe('a log file that fails', () => {
  test('is closed and given up, and all that was not safe stands in the next one at once, with the reason', async () => {
    const { recorder, disk, take, written, told, pass } = await started();
    recorder.append(note(1), 1, 'soon');
    disk.syncs = (name) => name !== 'run.jsonl';
    await pass(0.5);
    expect(take().toSorted()).toEqual([
      'close run.jsonl',
      'open run-2.jsonl',
      'sync folder',
      'sync run-2.jsonl',
      'sync run.jsonl',
    ]);
    expect(told).toEqual([
      { state: 'failed', savedToS: 0, problem: broken, lostReadings: 0 },
      { state: 'recording', savedToS: 1, problem: null, lostReadings: 0 },
    ]);
    const lines = (written.get('run-2.jsonl') ?? '').trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line))).toMatchObject([
      { seq: 0, kind: 'segment', segment: 2, because: 'The cable came off.' },
      // To the millisecond of the clock of the run.
      { seq: 1, monoS: 1000, kind: 'mark', timeS: 1 },
    ]);
    expect(recorder.unsaved()).toEqual([]);
  });

  test('is tried again only every two seconds once the next one fails as well', async () => {
    const { recorder, disk, take, told, pass } = await started();
    disk.syncs = () => false;
    disk.writes = () => 'no';
    recorder.append(note(1), 1, 'now');
    await pass(0);
    expect(take().filter((what) => what.startsWith('open'))).toEqual(['open run-2.jsonl']);
    expect(told.map(({ state }) => state)).toEqual(['failed', 'failed']);
    await pass(1.9);
    expect(take().filter((what) => what.startsWith('open'))).toEqual([]);
    await pass(0.2);
    expect(take().filter((what) => what.startsWith('open'))).toEqual(['open run-3.jsonl']);
    expect(recorder.status()).toEqual({
      state: 'failed',
      savedToS: 0,
      problem: broken,
      lostReadings: 0,
    });
    disk.syncs = () => true;
    disk.writes = () => 'yes';
    await pass(2);
    expect(recorder.status()).toEqual({
      state: 'recording',
      savedToS: 1,
      problem: null,
      lostReadings: 0,
    });
  });

  test('though it can be begun and written is tried again only every two seconds as well', async () => {
    const { recorder, disk, take, pass } = await started();
    disk.syncs = () => false;
    recorder.append(note(1), 1, 'now');
    await pass(0);
    const opened = () => take().filter((what) => what.startsWith('open'));
    expect(opened()).toEqual(['open run-2.jsonl']);
    await pass(1.9);
    expect(opened()).toEqual([]);
    await pass(0.2);
    expect(opened()).toEqual(['open run-3.jsonl']);
    await pass(2);
    expect(opened()).toEqual(['open run-4.jsonl']);
  });

  test('while a sync of it is under way is not believed when that sync ends well', async () => {
    const { recorder, disk, written, told, pass } = await started();
    recorder.append(note(1), 1, 'now');
    // The sync is under way; this write makes the file one that is never trusted again.
    disk.writes = (name) => (name === 'run.jsonl' ? 'no' : 'yes');
    recorder.append(note(2), 2, 'now');
    await pass(0.5);
    const again = (written.get('run-2.jsonl') ?? '').trimEnd().split('\n').length;
    expect([again, told.map(({ state, savedToS }) => `${state} ${savedToS}`)]).toEqual([
      3,
      ['failed 0', 'recording 2'],
    ]);
  });

  test('is told and left at once, however long the disk takes to make the next one, in which all that was recorded meanwhile stands', async () => {
    const { recorder, disk, written, told, pass } = await started();
    const wake = hold(disk, 'openTakes');
    disk.syncs = (name) => name !== 'run.jsonl';
    recorder.append(note(1), 1, 'now');
    await pass(0.5);
    recorder.append(note(2), 2, 'soon');
    await pass(15);
    recorder.append(note(3), 3, 'now');
    expect(told.at(-1)).toMatchObject({ state: 'failed', savedToS: 0, problem: broken });
    wake();
    await pass(0.5);
    expect(told.at(-1)).toMatchObject({ state: 'recording', savedToS: 3, problem: null });
    const lines = (written.get('run-2.jsonl') ?? '').trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).seq)).toEqual([0, 1, 2, 3]);
  });

  test('while the run ends has its successor waited for, with the end of the run in it', async () => {
    const { recorder, disk, written, pass } = await started();
    const wake = hold(disk, 'openTakes');
    disk.syncs = (name) => name !== 'run.jsonl';
    recorder.append(note(1), 1, 'now');
    await pass(0.5);
    const closed = recorder.close({ timeS: 2 });
    await pass(5);
    wake();
    expect(await closed).toEqual(succeed(undefined));
    const lines = (written.get('run-2.jsonl') ?? '').trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).kind)).toEqual(['segment', 'mark', 'end']);
  });

  test('when the run ends is not tried again after that', async () => {
    const { recorder, disk, take, pass } = await started();
    disk.syncs = () => false;
    disk.writes = () => 'no';
    recorder.append(note(1), 1, 'now');
    await pass(0);
    expect(await recorder.close()).toEqual(fail(broken));
    take();
    await pass(60);
    expect(take()).toEqual([]);
  });
});

test('records carry the moment of the clock to the millisecond', async () => {
  const { recorder, written, pass } = await started();
  await pass(0.12345);
  recorder.append(note(1), 1, 'soon');
  const last = (written.get('run.jsonl') ?? '').trimEnd().split('\n').at(-1) ?? '';
  expect(JSON.parse(last)).toMatchObject({ seq: 1, monoS: 1000.123 });
});

test('what is safe is not synced again', async () => {
  const { recorder, take, pass } = await started();
  recorder.append(note(1), 1, 'now');
  await pass(10);
  expect([take(), recorder.status().savedToS]).toEqual([['sync run.jsonl'], 1]);
});

test('a record taken while the last sync is under way is safe as well before the recorder says that it has closed', async () => {
  const { recorder, disk, take } = await started();
  disk.syncTakes = async () => void (await new Promise(setImmediate));
  recorder.append(note(1), 1, 'now');
  recorder.append(note(2), 2, 'soon');
  const answer = await recorder.close();
  expect([answer, recorder.status().savedToS, recorder.unsaved(), take().at(-1)]).toEqual([
    succeed(undefined),
    2,
    [],
    'close run.jsonl',
  ]);
});
