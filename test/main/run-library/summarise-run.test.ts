import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { nodeFileLayer, summariseRun } from '#main';
import {
  encodeRecord,
  firstPreviousChecksum,
  type LogBody,
  type LogRecord,
  packReading,
  type Reading,
} from '#shared-core';
import { demoSourceSchema } from '../../../shared-core/contract/probe-schemas.ts';
import { failingFiles } from '../support/failing-files.ts';
import { logHeader } from '../support/log-header.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runId = '20250314T101503Z';
const header = logHeader(runId);
const wallMs = Date.UTC(2025, 2, 14, 11, 0, 0);

/** One file; its records are numbered from `firstSeq`. */
function logText(bodies: readonly LogBody[], firstSeq = 0): string {
  let previous = firstPreviousChecksum;
  const lines = bodies.map((body, index) => {
    const seq = firstSeq + index;
    const stamp = { seq, monoS: seq, wallMs: wallMs + seq * 1000 };
    const { line, checksum } = encodeRecord(body, stamp, previous);
    previous = checksum;
    return line;
  });
  return lines.join('');
}

async function folderOf(files: Readonly<Record<string, string>>): Promise<string> {
  const folder = await temporaryFolder();
  for (const [name, text] of Object.entries(files)) {
    await writeFile(path.join(folder, name), text, 'latin1');
  }
  return folder;
}

async function summaryOf(files: Readonly<Record<string, string>>, id = runId) {
  const found = await summariseRun(nodeFileLayer, await folderOf(files), id);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
}

const reading = (timeS: number, value: number, rest: Partial<Reading> = {}): LogBody => ({
  kind: 'readings',
  readings: [
    packReading({
      kind: 'reading',
      timeS,
      channel: 'head',
      value,
      unit: '°C',
      quality: 'good',
      ...rest,
    }),
  ],
});

test('a summary tells of the whole run: who it is, how long, how many readings of any kind, how it ended', async () => {
  const bodies: readonly LogBody[] = [
    { kind: 'header', header },
    reading(1, 20),
    reading(2, 300, { quality: 'bad' }),
    reading(3, 40, { channel: 'pot' }),
    { kind: 'mark', timeS: 7, markId: 1, mark: { type: 'heat-on' } },
    { kind: 'end', timeS: 9, how: 'clean' },
  ];
  const shown: LogRecord[] = [];
  const folder = await folderOf({ 'run.jsonl': logText(bodies) });
  const found = await summariseRun(nodeFileLayer, folder, runId, (record) => shown.push(record));
  expect(found).toMatchObject({ ok: true, value: { header, report: { problem: null } } });
  expect(found.ok && found.value.summary).toEqual({
    runId,
    name: header.settings.name,
    notes: '',
    startedAtIso: header.startedAtIso,
    durationS: 9,
    readings: 3,
    ended: 'clean',
    rehearsal: false,
    imported: false,
    plateau: null,
    heatOffCalledS: null,
    corrections: [],
    leftOut: [],
    damagedRecords: 0,
    unreadable: null,
  });
  expect(shown.map(({ body }) => body)).toEqual(bodies);
});

test('a run that was not ended lasted until the newest thing in it, whichever came last', async () => {
  const mark: LogBody = { kind: 'mark', timeS: 8, markId: 1, mark: { type: 'heat-on' } };
  const durationOf = async (...bodies: readonly LogBody[]) => {
    const { summary } = await summaryOf({
      'run.jsonl': logText([{ kind: 'header', header }, ...bodies]),
    });
    return [summary.ended, summary.durationS];
  };
  expect([
    await durationOf(reading(5, 20), mark),
    await durationOf(mark, reading(12, 20)),
    await durationOf(mark, reading(5, 20)),
    await durationOf(),
  ]).toEqual([
    ['cut-off', 8],
    ['cut-off', 12],
    ['cut-off', 8],
    ['cut-off', 0],
  ]);
});

test('the plateau is that of the good readings of the head alone, with its doubt', async () => {
  const held = Array.from({ length: 1500 }, (_, timeS) => {
    const unevenC = 0.0625 * (Math.floor(timeS / 3) % 3);
    const valueC = timeS < 300 ? 22 + timeS * 0.18 : 78.2;
    return [
      reading(timeS, valueC + unevenC),
      reading(timeS, 90 + unevenC, { channel: 'pot' }),
      reading(timeS, 150, { quality: 'bad' }),
    ];
  });
  const { summary } = await summaryOf({
    'run.jsonl': logText([{ kind: 'header', header }, ...held.flat()]),
  });
  // The mean of what the head held, 78.2 and 0, 0.0625, 0.125 °C by turns.
  expect(summary.plateau?.value).toBeCloseTo(78.2625, 1);
  // No better than the probe it was read with.
  expect(summary.plateau?.standardUncertainty).toBeGreaterThan(0.1);
});

test('the call to turn off the heat is the first of its kind, and no other alarm', async () => {
  const raised = (alarm: 'probe-lost' | 'plateau-departure', timeS: number): LogBody => ({
    kind: 'change',
    change: {
      kind: 'alarm-changed',
      timeS,
      record: {
        alarm,
        priority: 'high',
        raisedS: timeS,
        clearedS: null,
        acknowledgedS: null,
        because: '',
      },
      state: 'unacknowledged',
      snapshot: null,
    },
  });
  const calledS = async (...bodies: readonly LogBody[]) => {
    const text = logText([{ kind: 'header', header }, reading(1, 20), ...bodies]);
    return (await summaryOf({ 'run.jsonl': text })).summary.heatOffCalledS;
  };
  expect([
    await calledS(raised('probe-lost', 3)),
    await calledS(raised('probe-lost', 3), raised('plateau-departure', 5)),
    await calledS(raised('plateau-departure', 5), raised('plateau-departure', 9)),
  ]).toEqual([null, 5, 5]);
});

test('a header is looked for in the first file, then in the next one, then beside the log', async () => {
  const lost = logText([{ kind: 'header', header }, reading(1, 20)]);
  const headless = lost.slice(lost.indexOf('\n') + 1);
  const other = { ...header, settings: { ...header.settings, name: 'Second copy' } };
  const third = { ...header, settings: { ...header.settings, name: 'Third copy' } };
  const next = logText(
    [{ kind: 'segment', segment: 2, because: 'a failed sync', header: other }, reading(2, 20)],
    1,
  );
  const labels = logText([{ kind: 'header', header: third }]);
  const nameOf = async (files: Readonly<Record<string, string>>) =>
    (await summaryOf(files)).summary.name;
  expect([
    await nameOf({ 'run.jsonl': lost, 'run-2.jsonl': next, 'labels.jsonl': labels }),
    await nameOf({ 'run.jsonl': headless, 'run-2.jsonl': next, 'labels.jsonl': labels }),
    await nameOf({ 'run.jsonl': headless, 'labels.jsonl': labels }),
  ]).toEqual([header.settings.name, 'Second copy', 'Third copy']);
});

test('a run without any header is named by its folder, and dated by it or by its first record', async () => {
  const text = logText([{ kind: 'header', header }, reading(1, 20), reading(2, 21)]);
  const headless = { 'run.jsonl': text.slice(text.indexOf('\n') + 1) };
  const dated = await summaryOf(headless);
  const named = await summaryOf(headless, 'pears');
  const empty = await summaryOf({ 'run.jsonl': '' }, 'pears');
  expect(
    [dated, named, empty].map(({ summary, header: found }) => [
      found,
      summary.name,
      summary.startedAtIso,
      summary.readings,
      summary.unreadable,
    ]),
  ).toEqual([
    [null, runId, '2025-03-14T10:15:03.000Z', 2, { why: 'header-lost', message: '' }],
    [null, 'pears', '2025-03-14T11:00:01.000Z', 2, { why: 'header-lost', message: '' }],
    [null, 'pears', '1970-01-01T00:00:00.000Z', 0, { why: 'nothing-recorded', message: '' }],
  ]);
});

test('wherever the disk fails in mid-read, the run is not taken for a shorter one', async () => {
  const files = {
    'run.jsonl': logText([{ kind: 'header', header }, reading(1, 20)]),
    'labels.jsonl': logText([{ kind: 'label', name: 'Pears', notes: '' }], 1),
  };
  const folder = await folderOf(files);
  const sound = failingFiles(-1);
  expect((await summariseRun(sound.files, folder, runId)).ok).toBe(true);
  expect(sound.done().length).toBeGreaterThan(4);
  for (const failAt of sound.done().keys()) {
    const { files: failing } = failingFiles(failAt);
    expect([failAt, await summariseRun(failing, folder, runId)]).toMatchObject([
      failAt,
      { ok: false, error: { kind: 'failed' } },
    ]);
  }
});

test('a monitor that failed is told of the time in which nobody was advised, to the end or until the program was started anew', async () => {
  const { summary } = await summaryOf({
    'run.jsonl': logText([
      { kind: 'header', header },
      reading(1, 20),
      { kind: 'monitor-failed', timeS: 61, message: 'a bug' },
      {
        kind: 'continued',
        timeS: 200,
        closedS: 30,
        appVersion: '0.1.0',
        modelVersion: '1',
        source: demoSourceSchema.parse({ kind: 'demo' }),
      },
      reading(201, 20),
      { kind: 'monitor-failed', timeS: 660, message: 'a bug' },
      { kind: 'end', timeS: 700, how: 'clean' },
    ]),
  });
  const workedOut =
    'nobody was advised: the monitor had failed. The readings are all recorded; what is told of that time was worked out after the run.';
  expect([summary.ended, summary.leftOut]).toEqual([
    'clean',
    [`From 0:01:01 to 0:03:20 ${workedOut}`, `From 0:11:00 on ${workedOut}`],
  ]);
});

test('a reader of the probe that stopped is told of the time in which nothing was heard, to the end or until something was', async () => {
  type Link = Extract<LogBody, { kind: 'link' }>;
  const link = (timeS: number, state: Link['state'], reason: Link['reason']): LogBody => {
    return { kind: 'link', timeS, state, reason };
  };
  const { summary, unread } = await summaryOf({
    'run.jsonl': logText([
      { kind: 'header', header },
      reading(1, 20),
      link(30, 'lost', 'unplugged'),
      link(61, 'lost', 'reader-stopped'),
      link(63.5, 'back', 'reader-stopped'),
      reading(63.5, 20),
      link(90, 'lost', 'silent'),
      link(95, 'back', 'silent'),
      link(660, 'lost', 'reader-stopped'),
      { kind: 'end', timeS: 700, how: 'clean' },
    ]),
  });
  const why =
    'nothing of the probe is recorded: the part of the program that reads it had stopped. What the probe sent then is lost.';
  expect([summary.leftOut, unread]).toEqual([
    [`From 0:01:01 to 0:01:03 ${why}`, `From 0:11:00 on ${why}`],
    [
      { fromS: 61, toS: 63.5 },
      { fromS: 660, toS: null },
    ],
  ]);
});

test('what is missing from a record is told by its cause, and no record of a newer version is called damaged', async () => {
  const newer = { kind: 'weighed-by-itself', timeS: 3 } as unknown as LogBody;
  const { summary } = await summaryOf({
    'run.jsonl': logText([
      { kind: 'header', header },
      newer,
      { kind: 'dropped', timeS: 700, readings: 3, fromS: 61, toS: 660 },
      reading(701, 20),
      { kind: 'dropped', timeS: 702, readings: 1, fromS: 700, toS: 700, where: 'probe-process' },
    ]),
    // What the file before may have lost stands in the next one too.
    'run-2.jsonl': logText(
      [
        { kind: 'segment', segment: 2, because: 'EIO', header },
        newer,
        { kind: 'dropped', timeS: 700, readings: 3, fromS: 61, toS: 660 },
        reading(701, 20),
        { kind: 'dropped', timeS: 702, readings: 1, fromS: 700, toS: 700, where: 'probe-process' },
      ],
      0,
    ),
  });
  expect([summary.damagedRecords, summary.leftOut]).toEqual([
    0,
    [
      '1 record is left out here: a newer version of this program wrote what this one does not know. Nothing of it is lost; that version shows it.',
      '3 readings are missing between 0:01:01 and 0:11:00: the disk took nothing, and memory had no more room.',
      '1 reading is missing between 0:11:40 and 0:11:40: more came from the probe than could be taken.',
    ],
  ]);
});
