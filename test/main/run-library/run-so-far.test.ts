import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { nodeFileLayer } from '#main';
import { encodeRecord, firstPreviousChecksum, type LogBody } from '#shared-core';
import { addLater } from '../../../main/run-library/labels.ts';
import { readRunSoFar } from '../../../main/run-library/run-so-far.ts';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const header = logHeader('run');
const opened: LogBody = { kind: 'header', header };
const reading = (timeS: number): LogBody => ({ kind: 'readings', readings: [[timeS, 'head', 20]] });
const mark = (timeS: number, markId: number): LogBody => ({
  kind: 'mark',
  timeS,
  markId,
  mark: { type: 'heat-on' },
});
const called = (timeS: number, raisedS: number): LogBody => ({
  kind: 'change',
  change: {
    kind: 'alarm-changed',
    timeS,
    record: {
      alarm: 'plateau-departure',
      raisedS,
      clearedS: null,
      acknowledgedS: null,
      priority: 'high',
      because: '',
    },
    state: 'unacknowledged',
    snapshot: null,
  },
});

/** Records written one a second, a hundred seconds after the computer was started. */
const stamped = (bodies: readonly LogBody[]) =>
  bodies.map((body, seq) => ({
    stamp: { seq, monoS: 100 + seq, wallMs: 5000 + 1000 * seq },
    body,
  }));

function linesOf(records: readonly Partial<ReturnType<typeof stamped>[number]>[]) {
  let previous = firstPreviousChecksum;
  let text = '';
  for (const { stamp, body } of records) {
    if (stamp === undefined || body === undefined) expect.fail('A record has both.');
    const { line, checksum } = encodeRecord(body, stamp, previous);
    previous = checksum;
    text += line;
  }
  return { text, checksum: previous };
}

async function folderOf(bodies: readonly LogBody[], name = 'run.jsonl', from = '') {
  const folder = from === '' ? await temporaryFolder() : from;
  const { text, checksum } = linesOf(stamped(bodies));
  await writeFile(path.join(folder, name), text, 'latin1');
  return { folder, checksum };
}

async function soFar(...bodies: readonly LogBody[]) {
  const { folder } = await folderOf(bodies);
  const found = await readRunSoFar(nodeFileLayer, folder);
  return found.ok ? found.value : found.error.kind;
}

test('a run that was cut off is known by all that its record holds, and where that goes on', async () => {
  const bodies = [opened, reading(0.5), mark(1.5, 3), called(2.5, 2), called(3.5, 3), reading(3)];
  const { folder } = await folderOf(bodies);
  const found = await readRunSoFar(nodeFileLayer, folder);
  const { inputs, changes, ...past } =
    found.ok && found.value ? found.value : expect.fail('It is there.');
  expect(inputs.map(({ kind, timeS }) => [kind, timeS])).toEqual([
    ['reading', 0.5],
    ['mark', 1.5],
    ['reading', 3],
  ]);
  // Without the picture of everything that each was recorded with.
  expect(changes.map((change) => [change.kind, change.timeS, 'snapshot' in change])).toEqual([
    ['alarm-changed', 2.5, false],
    ['alarm-changed', 3.5, false],
  ]);
  const written = { seq: 5, monoS: 105, wallMs: 10_000 };
  const remembered = [...(past?.memory.pieces() ?? [])].flat().map(({ stamp }) => stamp.seq);
  expect(remembered).toEqual(stamped(bodies).map(({ stamp }) => stamp.seq));
  expect(past).toEqual({
    header,
    modelVersion: header.modelVersion,
    modelVersions: [header.modelVersion],
    readings: 2,
    lastMarkId: 3,
    heatOffCalledS: 2,
    endS: 3.5,
    written,
    // The first input was written at 101 s and had happened at 0.5 s; the latest says the run began no later than at 100.5 s.
    writtenAtS: 4.5,
    logEnd: { lastSegment: 1, seq: 5, timeS: 3.5, unsure: stamped(bodies).slice(1) },
    memory: expect.anything(),
    leftOut: expect.anything(),
    report: expect.objectContaining({ missingRecords: 0, unknownRecords: 0 }),
  });
});

test('a sleep is not counted, and what was continued goes on from the time and version that says so', async () => {
  const slept: LogBody = { kind: 'clock', timeS: 1, sleptS: 40, wallStepS: 0 };
  const continued: LogBody = {
    kind: 'continued',
    timeS: 90,
    closedS: 30,
    appVersion: '2',
    modelVersion: 'later',
    source: { kind: 'demo', rig: 'glassBeads', timeScale: 1, seed: 1 },
  };
  expect([
    await soFar(opened, reading(1), slept),
    await soFar(opened, reading(1), continued),
  ]).toMatchObject([
    { modelVersion: header.modelVersion, writtenAtS: 42 },
    // It went on only once all before it was safely on the disk.
    {
      modelVersion: 'later',
      modelVersions: [header.modelVersion, 'later'],
      writtenAtS: 90,
      logEnd: { unsure: [{ stamp: { seq: 2 }, body: continued }] },
    },
  ]);
  // Its probe took 3 s to be connected; killed again before any reading, nothing else tells of them.
  expect(await soFar(opened, reading(1), { ...continued, clockS: 99 })).toMatchObject({
    writtenAtS: 93,
  });
});

test('there is nothing to go on from where the run was ended, its header is lost or its folder holds no record', async () => {
  expect([
    await soFar(opened, reading(1), { kind: 'end', timeS: 2, how: 'clean' }),
    await soFar(reading(1)),
    await soFar(),
  ]).toEqual([null, null, null]);
  expect(await soFar(opened)).toMatchObject({ inputs: [], writtenAtS: 0, endS: 0 });
});

test('a run that was measured or put right since has had its end', async () => {
  const { folder } = await folderOf([opened, reading(1)]);
  const { clock } = createManualTime();
  const label = { kind: 'label', name: 'Pear', notes: '' } as const;
  await addLater(nodeFileLayer, clock, folder, [label]);
  const named = await readRunSoFar(nodeFileLayer, folder);
  expect(named.ok && named.value?.readings).toBe(1);
  const measured = { kind: 'late-mark', markId: 1, mark: { type: 'note', text: 'late' } } as const;
  await addLater(nodeFileLayer, clock, folder, [measured]);
  expect(await readRunSoFar(nodeFileLayer, folder)).toEqual({ ok: true, value: null });
});

test('the record goes on in a file under a number that no file has', async () => {
  const { folder } = await folderOf([opened, reading(1)]);
  await writeFile(path.join(folder, 'run-2.jsonl'), 'torn');
  await writeFile(path.join(folder, 'run-12.jsonl'), '');
  const found = await readRunSoFar(nodeFileLayer, folder);
  const unsure = stamped([opened, reading(1)]).slice(1);
  expect(found.ok && found.value?.logEnd).toEqual({ lastSegment: 12, seq: 1, timeS: 1, unsure });
});

test('of what a later file was begun with it was known which was saved; of what stands in it, not', async () => {
  const bodies = [opened, ...[1, 2, 3, 4].map(reading)];
  const { folder } = await folderOf(bodies.slice(0, 4));
  const segment: LogBody = { kind: 'segment', segment: 2, because: 'It failed.', header };
  const later = [{ ...stamped(bodies)[2], body: segment }, ...stamped(bodies).slice(3)];
  await writeFile(path.join(folder, 'run-2.jsonl'), linesOf(later).text, 'latin1');
  const found = await readRunSoFar(nodeFileLayer, folder);
  const { logEnd, written, readings } = (found.ok && found.value) || expect.fail('It is there.');
  expect({ logEnd, written, readings }).toEqual({
    logEnd: { lastSegment: 2, seq: 4, timeS: 4, unsure: stamped(bodies).slice(3) },
    written: stamped(bodies)[4]?.stamp,
    readings: 4,
  });
});
