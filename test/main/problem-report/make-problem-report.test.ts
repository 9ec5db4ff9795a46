import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeProblemReport, nodeFileLayer } from '#main';
import { type RunSummary, serialSourceSchema } from '#shared-core';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';
import { withoutPrivate } from '../../../main/problem-report/without-private.ts';
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
  plateauC: null,
  heatOffCalledS: null,
  damagedRecords: 2,
  unreadable: null,
};

async function madeReport(withRunNames: boolean) {
  const runsFolder = await temporaryFolder();
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
    owner,
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
