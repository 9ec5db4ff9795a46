import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, onTestFinished, test } from 'vitest';
import { createRunLibrary, nodeFileLayer, type Session, writePack } from '#main';
import {
  booksOfRun,
  contractLimits,
  createMonitor,
  defaultRunSettings,
  type MarkBody,
  type RequestAnswer,
  type RequestBody,
  type RequestName,
  type RunInput,
  writeReadingsCsv,
} from '#shared-core';
import { localIso } from '../../../main/run-library/local-iso.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { localTimeWords } from '../../../shared-core/wording/local-time-words.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';
import {
  ask,
  fetchTable,
  importTable,
  setUpSession as setUp,
  takeIn,
  teacher,
} from '../support/session-bench.ts';

const packMinutes = 180_000;
const pear = pearRun().run;
const settings = { ...pear.settings, attentionCheckS: null };
/** Every tenth second keeps the packs quick. */
const pearInputs = pear.inputs.filter(
  (input): input is RunInput => input.kind !== 'reading' || input.timeS % 10 === 0,
);
const pearCsv = [
  ...writeReadingsCsv({ inputs: pearInputs, stages: null, endS: pear.endS }, 'csv'),
].join('');

type ImportSays = Parameters<typeof takeIn>[2];

const importBytes = (session: Session, content: Uint8Array, says: ImportSays = {}) =>
  importTable(session, content, { settings, ...says });

const importRun = async (session: Session, csv: string, says: ImportSays = {}): Promise<string> =>
  (await takeIn(session, csv, { settings, ...says })).runId;

async function readWhole(session: Session, runId: string): Promise<RequestAnswer<'runs/read'>> {
  return ask(session, 'runs/read', { runId, fromIndex: 0 });
}

function booksOf({ settings: own, inputs, lateMarks = [], endS }: RequestAnswer<'runs/read'>) {
  const verdicts = analyseRun(own, inputs, endS);
  return booksOfRun({ settings: own, inputs: [...inputs, ...lateMarks], verdicts, endS });
}

const residue: readonly MarkBody[] = [
  { type: 'liquid-mass', liquid: 'residue', massG: 219.4 },
  { type: 'liquid-density', liquid: 'residue', densityKgPerM3: 996.9, temperatureC: 20 },
];

describe('measurements after a run', () => {
  test('go beside the closed log, complete the books, and can be taken back', async () => {
    const { session, runsFolder } = await setUp();
    const runId = await importRun(session, pearCsv);
    const log = path.join(runsFolder, runId, 'run.jsonl');
    const before = await readFile(log);
    const verdicts = analyseRun(settings, pearInputs, pear.endS);
    // A quick hand keeps the second before the first has been saved.
    const ids = await Promise.all(
      residue.map((mark) => ask(session, 'runs/book', { runId, mark })),
    );
    const page = await readWhole(session, runId);
    expect(ids.map(({ markId }) => markId)).toEqual(page.lateMarks?.map(({ markId }) => markId));
    expect(new Set(ids.map(({ markId }) => markId)).size).toBe(residue.length);
    expect(page.lateMarks?.map(({ mark }) => mark)).toEqual(residue);
    expect(booksOf(page).balance?.ethanol.closurePercent?.value).toBeGreaterThan(90);
    // Nothing that was concluded can change by it.
    expect((await readFile(log)).equals(before)).toBe(true);
    expect(analyseRun(page.settings, page.inputs, page.endS)).toEqual(verdicts);

    const withdrawnMarkId = page.lateMarks?.[1]?.markId ?? 0;
    const mark: MarkBody = { type: 'mark-withdrawn', withdrawnMarkId };
    await ask(session, 'runs/book', { runId, mark });
    expect(booksOf(await readWhole(session, runId)).residue).toBeNull();
  });

  test('can be nothing that the monitor would have concluded something from', async () => {
    const { session } = await setUp();
    const runId = await importRun(session, pearCsv);
    const refused: readonly MarkBody[] = [
      { type: 'heat-off' },
      { type: 'volume-read', volumeMl: 20 },
      // The first mark of the run is its heat-on.
      { type: 'mark-withdrawn', withdrawnMarkId: 1 },
    ];
    for (const mark of refused) {
      const answer = await session.handle('runs/book', { runId, mark }, teacher);
      expect(answer).toMatchObject({ ok: false, error: { kind: 'request-invalid' } });
    }
  });

  test('go out with the table and come in again: same verdicts, same books', async () => {
    const { session } = await setUp();
    const runId = await importRun(session, pearCsv);
    for (const mark of residue) await ask(session, 'runs/book', { runId, mark });
    const first = await readWhole(session, runId);
    for (const format of ['csv', 'csv-semicolon'] as const) {
      const content = await fetchTable(session, runId, format);
      const again = await readWhole(session, await importRun(session, content));
      expect(again.inputs).toEqual(first.inputs);
      expect(again.lateMarks).toEqual(first.lateMarks);
      expect(JSON.stringify(booksOf(again))).toBe(JSON.stringify(booksOf(first)));
    }
  });
});

describe('importing a file of another logger', () => {
  const mapping: NonNullable<RequestBody<'imports/finish'>['mapping']> = {
    decimal: ',',
    time: { column: 'Uhr', dateOrder: 'month-day' },
    channels: [
      { column: 'Kopf', channel: 'head', unit: '°F' },
      { column: 4, channel: 'air-pressure', unit: 'hPa' },
    ],
  };
  const odd = [
    'Prüfstand 3;;;',
    'Uhr;Kopf;Notiz;Luft',
    '03/04/2026 10:00:00;172,4;x;1.013,25',
    '03/04/2026 10:00:10;hot;;1.013,25',
    '03/05/2026 10:00:00;172,6;;1.012,00',
  ].join('\r\n');

  test('takes columns, units, decimals, order of dates and encoding as the person says, and lists bad rows', async () => {
    const { session } = await setUp();
    const content = Buffer.from(odd, 'latin1');
    const imported = await importBytes(session, content, { mapping, encoding: 'windows-1252' });
    if (!imported.ok) throw new Error(JSON.stringify(imported.error));
    const { runId, rejectedRows } = imported.value as RequestAnswer<'imports/finish'>;
    expect(rejectedRows).toEqual(['Line 4: "hot" in the column "Kopf" is not a number.']);
    const { inputs } = await readWhole(session, runId);
    expect(
      inputs.map((input) =>
        input.kind === 'reading'
          ? [input.timeS, input.channel, Number(input.value.toFixed(3)), input.unit]
          : input,
      ),
    ).toEqual([
      [0, 'head', 78, '°C'],
      [0, 'air-pressure', 101.325, 'kPa'],
      [10, 'air-pressure', 101.325, 'kPa'],
      [86_400, 'head', 78.111, '°C'],
      [86_400, 'air-pressure', 101.2, 'kPa'],
    ]);
  });

  test('ends in a sentence for whatever is no table, and leaves nothing behind', async () => {
    const { session, runsFolder } = await setUp();
    const noise = Uint8Array.from({ length: 200_000 }, (_, index) => (index * 7919) % 251);
    const hostile: readonly (readonly [Uint8Array, RegExp])[] = [
      [noise, /^The file is not text/],
      [Buffer.from(`t,head\n${'"'.repeat(300_000)}`), /^No row of the file holds a time/],
      [Buffer.from(`${'a,'.repeat(1_000_000)}b\n${'1,'.repeat(1_000_000)}1\n`), /^No time column/],
      [Buffer.from('\n\n\n'), /^The file is empty/],
    ];
    for (const [content, sentence] of hostile) {
      const answer = await importBytes(session, content);
      expect(answer).toMatchObject({
        ok: false,
        error: { kind: 'request-invalid', message: expect.stringMatching(sentence) },
      });
    }
    expect(readdirSync(runsFolder).filter((name) => /^\d{8}T/.test(name))).toEqual([]);
  });

  test('refuses what is too large, grows, comes not whole or belongs to nobody', async () => {
    const { session } = await setUp();
    const refuse = async <N extends RequestName>(name: N, body: RequestBody<N>) =>
      expect(await session.handle(name, body, { mayCommand: true })).toMatchObject({
        ok: false,
        error: { kind: 'request-invalid' },
      });
    await refuse('imports/begin', { bytes: contractLimits.importBytes + 1 });
    await refuse('imports/add', { importId: 'import-9', base64: 'AAAA' });
    const finish = { encoding: 'auto', mapping: null, settings } as const;
    const half = await ask(session, 'imports/begin', { bytes: 6 });
    await ask(session, 'imports/add', { ...half, base64: 'AAAA' });
    await refuse('imports/finish', { ...half, ...finish });
    const grown = await ask(session, 'imports/begin', { bytes: 2 });
    await refuse('imports/add', { ...grown, base64: 'AAAA' });
    const dropped = await ask(session, 'imports/begin', { bytes: 3 });
    await ask(session, 'imports/cancel', dropped);
    await refuse('imports/add', { ...dropped, base64: 'AAAA' });
  });
});

test('a wrong start of an imported run is put right with a reason, and the record keeps both', async () => {
  const { session, runsFolder } = await setUp();
  const runId = await importRun(session, pearCsv, { startedAtIso: '2026-03-18T09:15:00.000Z' });
  const log = path.join(runsFolder, runId, 'run.jsonl');
  const before = await readFile(log);
  await ask(session, 'runs/correct', {
    runId,
    correction: {
      startedAtIso: '2026-03-18T10:15:00.000Z',
      reason: 'the logger was an hour slow',
    },
  });
  expect((await readWhole(session, runId)).summary).toMatchObject({
    startedAtIso: '2026-03-18T10:15:00.000Z',
    corrections: [
      `Corrected after the run: began ${localTimeWords(localIso('2026-03-18T09:15:00.000Z'))} → ${localTimeWords(localIso('2026-03-18T10:15:00.000Z'))}. Reason: the logger was an hour slow`,
    ],
  });
  expect((await readFile(log)).equals(before)).toBe(true);
});

describe('packs', { timeout: packMinutes }, () => {
  test('of two runs hold the same bytes as the folder that the command writes, and tell how far they are', async () => {
    const { session, runsFolder, time } = await setUp();
    const runIds = [
      await importRun(session, pearCsv),
      await importRun(session, pearCsv, {
        settings: { ...defaultRunSettings, name: '=1+1', attentionCheckS: null },
      }),
    ];
    const done: number[] = [];
    session.on('pack', (progress) => done.push(progress.done));
    const packId = 'window-1';
    const { fileName, bytes } = await ask(session, 'packs/make', { packId, runIds });
    expect(fileName).toMatch(/^\d{8}T\d{6}Z-pear-juice-ferment-and-1-more\.zip$/);
    expect(done).toEqual(done.toSorted((a, b) => a - b));
    expect([done[0], done.at(-1), done.length > 30]).toEqual([0, 100, true]);

    const pieces: Buffer[] = [];
    for (let fromByte: number | null = 0; fromByte !== null; ) {
      const read: RequestAnswer<'packs/read'> = await ask(session, 'packs/read', {
        packId,
        fromByte,
      });
      pieces.push(Buffer.from(read.base64, 'base64'));
      fromByte = read.nextByte;
    }
    const zip = Buffer.concat(pieces);
    expect(zip.length).toBe(bytes);

    const library = createRunLibrary({
      files: nodeFileLayer,
      clock: time.clock,
      runsFolder,
      mayWrite: () => false,
    });
    const runs = [];
    for (const runId of runIds) {
      const run = await library.whole(runId);
      if (!run.ok) throw new Error(run.error.kind);
      runs.push({ run: run.value });
    }
    const outDir = mkdtempSync(path.join(tmpdir(), 'pack-'));
    onTestFinished(() => rmSync(outDir, { recursive: true }));
    const createdMs = time.clock.wallMs();
    const written = await writePack({
      runs,
      outDir,
      files: nodeFileLayer,
      createMonitor,
      madeBy: { version: '0.1.0', modelVersion: '1' },
      createdMs,
    });
    if (!written.ok) throw new Error(written.error.message);
    const inZip = unzipSync(zip);
    expect(Object.keys(inZip)).toEqual(written.value);
    for (const name of written.value) {
      const onDisk = readFileSync(path.join(outDir, name));
      expect(onDisk.equals(Buffer.from(inZip[name] ?? [])), name).toBe(true);
    }

    await ask(session, 'packs/drop', { packId });
    const gone = await session.handle('packs/read', { packId, fromByte: 0 }, { mayCommand: false });
    expect(gone).toMatchObject({ ok: false, error: { kind: 'request-invalid' } });
  });

  test('of a run that can’t be opened hold its files as they are', async () => {
    const { session, runsFolder } = await setUp();
    const runId = '20250314T101503Z';
    mkdirSync(path.join(runsFolder, runId), { recursive: true });
    writeFileSync(path.join(runsFolder, runId, 'run.jsonl'), 'no header left\n');
    const { runs } = await ask(session, 'runs/list', {});
    expect(runs.map((run) => [run.runId, run.unreadable?.why])).toEqual([[runId, 'header-lost']]);
    const packId = 'window-2';
    const made = await ask(session, 'packs/make-files', { packId, runId });
    const { base64, nextByte } = await ask(session, 'packs/read', { packId, fromByte: 0 });
    const inZip = unzipSync(Buffer.from(base64, 'base64'));
    expect([made.fileName, nextByte]).toEqual(['20250314T101503Z-files.zip', null]);
    expect(Buffer.from(inZip['run.jsonl'] ?? []).toString()).toBe('no header left\n');
    // Neither a way out of the library nor a folder in it that is no run.
    mkdirSync(path.join(runsFolder, 'letters'));
    writeFileSync(path.join(runsFolder, 'letters', 'private.txt'), 'not a run');
    for (const elsewhere of ['../elsewhere', 'letters', 'trash']) {
      const body = { packId, runId: elsewhere };
      const none = await session.handle('packs/make-files', body, { mayCommand: false });
      expect(none).toMatchObject({ ok: false, error: { kind: 'run-not-found' } });
    }
  });
});
