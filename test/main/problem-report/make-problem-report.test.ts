import { writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nodeFileLayer } from '#main';
import {
  asGiven,
  type ProbeSource,
  type RunSummary,
  serialSourceSchema,
  worded,
} from '#shared-core';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';
import {
  makeProblemReport,
  type ReportParts,
} from '../../../main/problem-report/make-problem-report.ts';
import { problemInShort } from '../../../main/problem-report/problem-in-short.ts';
import { everyText, withoutPrivate } from '../../../main/problem-report/without-private.ts';
import { problemReportSchema } from '../../../shared-core/contract/problem-report.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const owner = { userName: 'm.quitte', homeFolder: '/home/m.quitte', hostName: 'lab-7' };
const run: RunSummary = {
  runId: '20250314T101500Z',
  name: 'Pear juice of group B',
  notes: 'Ask M. Quitte',
  startedAtIso: '2025-03-14T10:15:00.000Z',
  durationS: 60,
  readings: 60,
  ended: 'cut-off',
  rehearsal: false,
  plateau: null,
  heatOffCalledS: null,
  damagedRecords: 2,
  unreadable: null,
};

async function madeReport(
  withRunNames: boolean,
  other: Partial<ReportParts> = {},
  told: Pick<ReportParts, 'owner'> = { owner },
) {
  const runsFolder = other.runsFolder ?? (await temporaryFolder());
  const report = await makeProblemReport({
    app: { version: '0.1.0', modelVersion: '1', shell: 'loopback' },
    nowMs: Date.parse('2025-03-14T11:00:00.000Z'),
    files: nodeFileLayer,
    runsFolder,
    mayWrite: true,
    runs: [run, { ...run, runId: '20250313T101500Z', damagedRecords: 0, ended: 'clean' }],
    doubtfulFiles: ['kept-rigs.json: newer'],
    status: {
      ...noProbeStatus,
      state: 'silent',
      source: serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0', baudRate: 9600 }),
      rejectedLines: 3,
      lastLine: 'probe of M.QUITTE',
      problem: { kind: 'port-failed', path: '/home/m.quitte/port', message: 'EIO on LAB-7' },
    },
    ports: [
      {
        path: '/dev/ttyACM0',
        manufacturer: 'made by somebody',
        vendorId: '2341',
        productId: '0043',
        serialNumber: 'S-4711',
        likelyProbe: true,
      },
    ],
    recording: {
      state: 'failed',
      runId: run.runId,
      startedAtIso: run.startedAtIso,
      savedToS: 12,
      problem: { kind: 'disk-full', path: `${runsFolder}/${run.runId}` },
    },
    recentProblems: [
      {
        lastAtIso: '2025-03-14T10:59:00.000Z',
        times: 2,
        what: `runs/read: run-unreadable: ${runsFolder}/x of "pear JUICE of group B" (C:\\Users\\Quitte Maria\\x)`,
      },
    ],
    window: null,
    withRunNames,
    ...told,
    ...other,
  });
  return { report: problemReportSchema.parse(report), runsFolder };
}

test('a report tells what a mender needs, and what leads to a person stands nowhere in it', async () => {
  const { report, runsFolder } = await madeReport(false);
  expect(report).toMatchObject({
    madeAtIso: '2025-03-14T11:00:00.000Z',
    program: { version: '0.1.0', modelVersion: '1', shell: 'loopback' },
    computer: { platform: process.platform, architecture: process.arch, node: process.version },
    folder: {
      freeMb: expect.any(Number),
      mayWrite: true,
      runs: 2,
      cutOffRuns: 1,
      unreadableRuns: 0,
      damagedRecords: 2,
      doubtfulFiles: ['kept-rigs.json: newer'],
    },
    probe: {
      state: 'silent',
      kind: 'serial',
      lines: [{ language: 'auto', baudRate: 9600, parity: null }],
      rejectedLines: 3,
      problem: 'port-failed at [home]/port: EIO on [computer]',
    },
    ports: [{ vendorId: '2341', productId: '0043', likelyProbe: true }],
    recording: {
      state: 'failed',
      problem: 'disk-full at [folder of runs]/20250314T101500Z',
    },
    recentProblems: [
      {
        times: 2,
        what: expect.stringMatching(
          /^runs\/read: run-unreadable: \[folder of runs\]\/x of "\[name of a run\]" \(\[home\]/,
        ),
      },
    ],
  });
  const text = JSON.stringify(report).toLowerCase();
  const secrets = [...Object.values(owner), runsFolder, run.name, run.notes, 'S-4711', 'somebody'];
  expect(secrets.filter((secret) => text.includes(secret.toLowerCase()))).toEqual([]);
});

test('the names of runs are in it only where the person said so', async () => {
  const { report } = await madeReport(true);
  expect(report.runNames).toEqual(['Pear juice of group B']);
  expect((await madeReport(false)).report).not.toHaveProperty('runNames');
});

test('what was put aside of kept files is told by name, and no other file is', async () => {
  const runsFolder = await temporaryFolder();
  const names = [
    'kept-rigs.json.not-understood',
    'kept-rigs.json.older-version-2',
    'known-probes.json',
    'notes.not-understood.txt',
  ];
  for (const name of names) await writeFile(path.join(runsFolder, name), '');
  const { report } = await madeReport(false, { runsFolder });
  expect([...report.folder.doubtfulFiles].sort()).toEqual([
    'kept-rigs.json.not-understood',
    'kept-rigs.json.older-version-2',
    'kept-rigs.json: newer',
  ]);
});

test('how much room and memory there is is told in millions of bytes', async () => {
  const files = {
    ...nodeFileLayer,
    freeBytes: async () => ({ ok: true, value: 12_400_000 }) as const,
  };
  const { report } = await madeReport(false, { files });
  expect([report.folder.freeMb, report.computer.memoryMb]).toEqual([
    12,
    Math.round(os.totalmem() / 1e6),
  ]);
});

test('where folder, runs, probe and record say nothing, the report says just that', async () => {
  const gone = async () => ({
    ok: false as const,
    error: { kind: 'missing', path: '/nowhere', message: 'ENOENT' } as const,
  });
  const files = { ...nodeFileLayer, freeBytes: gone, list: gone };
  const nothing = { runs: null, status: null, recording: null, doubtfulFiles: [] };
  const { report } = await madeReport(true, { files, ...nothing });
  expect(report).toMatchObject({
    folder: { freeMb: null, runs: null, cutOffRuns: 0, unreadableRuns: 0, doubtfulFiles: [] },
    probe: null,
    recording: null,
    runNames: [],
  });
});

test('of several probes each line is told, of a simulated still and of no probe none', async () => {
  const serial = (path: string, language: string) =>
    serialSourceSchema.parse({ kind: 'serial', path, language, parity: 'even' });
  const probes = [serial('/dev/ttyACM0', 'scpi'), serial('/dev/ttyACM1', 'balance')];
  const linesOf = async (source: ProbeSource | null) =>
    (await madeReport(false, { status: { ...noProbeStatus, source } })).report.probe;
  const line = { baudRate: 115_200, parity: 'even' };
  expect(await linesOf({ kind: 'several', probes, timeScale: 1 })).toMatchObject({
    kind: 'several',
    lines: [
      { language: 'scpi', ...line },
      { language: 'balance', ...line },
    ],
    droppedReadings: 0,
    thinnedHeadReadings: 0,
    problem: null,
  });
  const demo: ProbeSource = { kind: 'demo', rig: 'vigreux', timeScale: 60, seed: 1 };
  expect(await linesOf(demo)).toMatchObject({ kind: 'demo', lines: [] });
  expect(await linesOf(null)).toMatchObject({ kind: null, lines: [] });
});

test('whose computer it is the system says, where nobody else does', async () => {
  const what = `${os.homedir()}/runs on ${os.hostname()}`;
  const problem = { lastAtIso: '2025-03-14T10:59:00.000Z', times: 1, what };
  const { report } = await madeReport(false, { recentProblems: [problem] }, {});
  expect(report.recentProblems[0]?.what).toBe('[home]/runs on [computer]');
});

test('a longer secret goes before one that it holds, and a single letter is no secret', () => {
  const secrets = [
    { text: 'Quince', standsFor: '[user]' },
    { text: 'Quince of group B', standsFor: '[name of a run]' },
    { text: 'x', standsFor: '[letter]' },
    { text: '', standsFor: '[nothing]' },
  ];
  const said = 'Quince of group B by Quince, x times';
  expect(withoutPrivate(said, secrets)).toBe('[name of a run] by [user], x times');
  expect(withoutPrivate(said, secrets.toReversed())).toBe('[name of a run] by [user], x times');
});

test('texts are changed however deep they lie, and nothing else is', () => {
  const given = { a: 'one', b: [1, 'two', null, { c: 'three', d: true }], e: undefined };
  expect(everyText(given, (text) => text.toUpperCase())).toEqual({
    a: 'ONE',
    b: [1, 'TWO', null, { c: 'THREE', d: true }],
    e: undefined,
  });
});

test('a problem in short says its kind, and where and what was said where that is known', () => {
  expect([
    problemInShort({ kind: 'not-recording' }),
    problemInShort({ kind: 'disk-full', path: '/runs' }),
    problemInShort({ kind: 'internal', message: 'a bug' }),
    problemInShort({ kind: 'port-failed', path: '/dev/ttyACM0', message: 'EIO' }),
  ]).toEqual([
    'not-recording',
    'disk-full at /runs',
    'internal: a bug',
    'port-failed at /dev/ttyACM0: EIO',
  ]);
});

test('wherever a secret stands as a word of its own, and whatever signs it holds, it is taken out', () => {
  const word = fc.stringMatching(/^[A-Za-z0-9$.*+()[\]\\-]{2,12}$/);
  const between = fc.constantFrom(' ', '/', '\\', '"', ':', '\n');
  fc.assert(
    fc.property(word, between, between, (secret, before, after) => {
      const text = `x${before}${secret.toUpperCase()}${after}y`;
      const cleaned = withoutPrivate(text, [{ text: secret, standsFor: '…' }]);
      expect(cleaned).toBe(`x${before}…${after}y`);
    }),
  );
});

test('runs that are called by numbers make no moment, version or count unreadable', async () => {
  const runs = ['2025', '14', '9600', '10'].map((name) => ({ ...run, name }));
  const app = { version: '0.14.0', modelVersion: '14', shell: 'loopback' };
  const what = 'probe: port-failed at /dev/ttyACM0: no answer in 10 s';
  const lastAtIso = '2025-03-14T10:59:00.000Z';
  const recentProblems = [{ lastAtIso, times: 1, what }];
  const { report } = await madeReport(false, { runs, app, recentProblems });
  expect(report).toMatchObject({
    madeAtIso: '2025-03-14T11:00:00.000Z',
    program: app,
    recentProblems: [{ lastAtIso, what }],
  });
});

test('neither the serial number in the path of a port, nor a folder that somebody renamed, nor what stood in a file is told', async () => {
  const refusal = problemInShort({
    kind: 'request-invalid',
    message: worded('No time can be read in the column "{column}".', {
      column: asGiven('Kopf (M. Birne)'),
    }),
  });
  const said = [
    'port-busy at /dev/cu.usbserial-S-4711',
    'port-not-found at /dev/serial/by-id/usb-Maker_Probe_B0815-if00-port0',
    'port-failed at /dev/cu.Birnes-Telefon: EIO',
    'port-failed at /dev/ttyUSB0: EIO, S-4711',
    'port-failed at /dev/pts/12: EIO',
    'run-unreadable at x/Birne-Gruppe-2/run.jsonl',
    refusal,
  ];
  const { report } = await madeReport(false, {
    runs: [{ ...run, runId: 'Birne-Gruppe-2' }],
    recentProblems: said.map((what) => ({ lastAtIso: '', times: 1, what })),
  });
  expect(report.recentProblems.map(({ what }) => what)).toEqual([
    'port-busy at /dev/[port]',
    'port-not-found at /dev/[port]',
    'port-failed at /dev/[port]: EIO',
    'port-failed at /dev/ttyUSB0: EIO, [serial number]',
    'port-failed at /dev/pts/12: EIO',
    'run-unreadable at x/[folder of a run]/run.jsonl',
    'request-invalid: No time can be read in the column "[as given]".',
  ]);
});

test('runs that cannot be read are told with the reason, each reason once and with nothing private', async () => {
  const refused = { why: 'read-failed', message: 'EIO: read /home/m.quitte/run.jsonl' } as const;
  const runs = [refused, refused, { why: 'header-lost', message: '' } as const].map(
    (unreadable) => ({ ...run, unreadable }),
  );
  const { report } = await madeReport(false, { runs });
  expect([report.folder.unreadableRuns, report.folder.unreadableBecause]).toEqual([
    3,
    ['read-failed: EIO: read [home]/run.jsonl', 'header-lost'],
  ]);
});
