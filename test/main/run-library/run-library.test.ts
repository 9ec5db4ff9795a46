import { execFileSync } from 'node:child_process';
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  checkRuns,
  createRunLibrary,
  type FileLayer,
  type FileProblem,
  nodeFileLayer,
  pageInputs,
  type RunCheck,
} from '#main';
import { defaultRunSettings, type LogBody } from '#shared-core';
import { breakableDisk } from '../support/breakable-disk.ts';
import { logHeader } from '../support/log-header.ts';
import { logText } from '../support/log-text.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const readings = (count: number): readonly LogBody[] =>
  Array.from({ length: count }, (_, second) => ({
    kind: 'readings',
    readings: [[second, 'head', 20 + second / 16]],
  }));

function bodiesOf(runId: string, count: number): readonly LogBody[] {
  return [
    { kind: 'header', header: logHeader(runId) },
    ...readings(count),
    { kind: 'end', timeS: count, how: 'clean' },
  ];
}

async function setUp(texts: Readonly<Record<string, string>>) {
  const runsFolder = await temporaryFolder();
  for (const [runId, text] of Object.entries(texts)) {
    await mkdir(path.join(runsFolder, runId));
    await writeFile(path.join(runsFolder, runId, 'run.jsonl'), text, 'latin1');
  }
  const { clock } = createManualTime();
  const files = nodeFileLayer;
  const open = (mayWrite = true) =>
    createRunLibrary({ files, clock, runsFolder, mayWrite: () => mayWrite });
  return { runsFolder, clock, open, library: open() };
}

describe('createRunLibrary', () => {
  test('a read that failed once is made anew by the next question', async () => {
    const { runsFolder, clock } = await setUp({ long: logText(bodiesOf('long', pageInputs + 5)) });
    const disk = breakableDisk();
    const library = createRunLibrary({
      files: disk.files,
      clock,
      runsFolder,
      mayWrite: () => true,
    });
    const known = await library.summary('long');
    if (!known.ok) expect.fail(known.error.kind);
    disk.breakDown();
    expect((await library.page('long', 0)).ok).toBe(false);
    disk.mend();
    const again = await library.page('long', 0);
    expect(again.ok && again.value.inputs.length).toBe(pageInputs);
  });

  test('a pipe in the place of a log is no log, and holds nothing up', async () => {
    const { runsFolder, library } = await setUp({ whole: logText(bodiesOf('whole', 3)) });
    await mkdir(path.join(runsFolder, '20260101T000000Z'));
    execFileSync('mkfifo', [path.join(runsFolder, '20260101T000000Z', 'run.jsonl')]);
    const listed = await library.list();
    expect(listed.ok && listed.value.map(({ runId, readings }) => ({ runId, readings }))).toEqual([
      { runId: 'whole', readings: 3 },
      { runId: '20260101T000000Z', readings: 0 },
    ]);
  });

  test('pages through a long run so that every input comes once and in order', async () => {
    const count = pageInputs + 5;
    const { library } = await setUp({ long: logText(bodiesOf('long', count)) });
    const timesS: number[] = [];
    const indexes: (number | null)[] = [];
    for (let next: number | null = 0; next !== null; ) {
      const page = await library.page('long', next);
      if (!page.ok) expect.fail(page.error.kind);
      timesS.push(...page.value.inputs.map(({ timeS }) => timeS));
      next = page.value.nextIndex;
      indexes.push(next);
    }
    expect(indexes).toEqual([pageInputs, null]);
    expect(timesS).toEqual(Array.from({ length: count }, (_, second) => second));
    const again = await library.page('long', pageInputs + 3);
    expect(again.ok && again.value.inputs[0]?.timeS).toBe(pageInputs + 3);
  });

  test('answers requests for pages of several windows at once', async () => {
    const { library } = await setUp({ run: logText(bodiesOf('run', 50)) });
    const pages = await Promise.all([0, 10, 0, 49, 50].map((from) => library.page('run', from)));
    expect(pages.map((page) => page.ok && page.value.inputs.length)).toEqual([50, 40, 50, 1, 0]);
  });

  test('derives a summary once, and again when the log has changed', async () => {
    const bodies = bodiesOf('run', 5);
    const { runsFolder, open } = await setUp({ run: logText(bodies) });
    const first = await open().list();
    const stored = path.join(runsFolder, 'run', 'summary.json');
    const text = await readFile(stored, 'utf8');
    // Only a stored summary can tell this name.
    await writeFile(stored, text.replaceAll('Pear-juice ferment', 'From the store'));
    const second = await open().list();
    await writeFile(path.join(runsFolder, 'run', 'run.jsonl'), logText(bodies.slice(0, 3)));
    const third = await open().list();
    await writeFile(stored, '{"half":');
    const fourth = await open().list();
    const shown = [first, second, third, fourth].map((list) =>
      list.ok
        ? list.value.map(({ name, readings, ended }) => ({ name, readings, ended }))
        : list.error,
    );
    expect(shown).toEqual([
      [{ name: 'Pear-juice ferment', readings: 5, ended: 'clean' }],
      [{ name: 'From the store', readings: 5, ended: 'clean' }],
      [{ name: 'Pear-juice ferment', readings: 2, ended: 'cut-off' }],
      [{ name: 'Pear-juice ferment', readings: 2, ended: 'cut-off' }],
    ]);
  });

  test('writes nothing when another instance has the folder', async () => {
    const { runsFolder, open } = await setUp({ run: logText(bodiesOf('run', 5)) });
    await open(false).list();
    expect(await readdir(path.join(runsFolder, 'run'))).toEqual(['run.jsonl']);
  });

  test('skips and counts a damaged record, and opens a run whose header is damaged', async () => {
    const text = logText(bodiesOf('run', 9));
    const damaged = text.replace('"head",20.25]', '"head",21.25]');
    const { runsFolder, library } = await setUp({ run: damaged });
    await library.keepHeader(path.join(runsFolder, 'run'), logHeader('run'));
    const page = await library.page('run', 0);
    const { inputs, summary } = page.ok ? page.value : expect.fail('It is not read.');
    expect([inputs.length, summary.damagedRecords, summary.leftOut]).toEqual([
      8,
      1,
      ['1 damaged record was skipped; the rest is good.'],
    ]);
    const file = path.join(runsFolder, 'run', 'run.jsonl');
    await writeFile(file, `#${damaged}`, 'latin1');
    const headless = await library.page('run', 0);
    expect(headless.ok && headless.value.settings).toEqual(defaultRunSettings);
    await rm(path.join(runsFolder, 'run', 'labels.jsonl'));
    await writeFile(file, text.slice(text.indexOf('\n') + 1), 'latin1');
    expect(await library.page('run', 0)).toMatchObject({
      ok: false,
      error: { kind: 'run-unreadable' },
    });
  });

  test('adds nothing to what is no run of it: neither to people’s own folder beside them, nor outside', async () => {
    const { runsFolder, library } = await setUp({ run: logText(bodiesOf('run', 1)) });
    const worksheets = path.join(runsFolder, 'worksheets');
    await mkdir(worksheets);
    for (const runId of ['worksheets', '..', '../elsewhere', 'run/..']) {
      const answers = [
        await library.rename(runId, { name: 'Pears', notes: '' }),
        await library.book(runId, { type: 'note', text: 'clear' }),
      ];
      const refused = { ok: false, error: { kind: 'run-not-found', runId } };
      expect(answers).toEqual([refused, refused]);
    }
    expect([await readdir(worksheets), (await readdir(runsFolder)).sort()]).toEqual([
      [],
      ['run', 'worksheets'],
    ]);
  });

  test('dates a run without a header by the name of its folder', async () => {
    const { library } = await setUp({ '20250314T101503Z-2': 'no run\n' });
    const listed = await library.list();
    expect(listed.ok && listed.value.map(({ name, startedAtIso }) => [name, startedAtIso])).toEqual(
      [['20250314T101503Z-2', '2025-03-14T10:15:03.000Z']],
    );
  });

  test('lists what can’t be opened too, and says why', async () => {
    const text = logText(bodiesOf('headless', 3));
    const { runsFolder, clock } = await setUp({
      headless: text.slice(text.indexOf('\n') + 1),
      '20250314T101503Z': text,
      '20250314T101504Z': text,
      '20250314T101505Z': text,
      whole: text,
    });
    await rm(path.join(runsFolder, '20250314T101503Z', 'run.jsonl'));
    await writeFile(path.join(runsFolder, '20250314T101503Z', 'notes.txt'), 'kept');
    // As an account without permission, and a disk with a bad sector, answer.
    const failing: Readonly<Record<string, FileProblem>> = {
      '20250314T101504Z': { kind: 'read-only', path: '', message: 'EACCES' },
      '20250314T101505Z': { kind: 'failed', path: '', message: 'EIO: i/o error, read' },
    };
    const library = createRunLibrary({
      files: {
        ...nodeFileLayer,
        async read(file, offset, length) {
          const error = failing[path.basename(path.dirname(file))];
          return error ? { ok: false, error } : nodeFileLayer.read(file, offset, length);
        },
      },
      clock,
      runsFolder,
      mayWrite: () => true,
    });
    const listed = await library.list();
    expect(
      listed.ok &&
        listed.value.map(({ runId, unreadable }) => [runId, unreadable?.why, unreadable?.message]),
    ).toEqual([
      ['whole', undefined, undefined],
      ['headless', 'header-lost', ''],
      ['20250314T101505Z', 'read-failed', 'EIO: i/o error, read'],
      ['20250314T101504Z', 'not-permitted', 'EACCES'],
      ['20250314T101503Z', 'log-missing', 'There is no run log in this folder.'],
    ]);
    expect(await library.trash('20250314T101505Z')).toEqual({ ok: true, value: undefined });
    const left = await library.list();
    expect(left.ok && left.value.length).toBe(4);
  });

  test('names runs so that they sort by time and never takes a name twice', async () => {
    const { library } = await setUp({});
    const wallMs = Date.UTC(2025, 2, 14, 10, 15, 3);
    const made = [await library.makeRunFolder(wallMs), await library.makeRunFolder(wallMs)];
    expect(made.map((one) => one.ok && one.value.runId)).toEqual([
      '20250314T101503Z',
      '20250314T101503Z-2',
    ]);
  });

  test('gives two that ask at once a folder each', async () => {
    const { library } = await setUp({});
    const wallMs = Date.UTC(2025, 2, 14, 10, 15, 3);
    const made = await Promise.all([1, 2, 3].map(() => library.makeRunFolder(wallMs)));
    expect(new Set(made.map((one) => one.ok && one.value.runId)).size).toBe(3);
  });

  test('lists the newest first, without the one that is being recorded', async () => {
    const ids = ['20250314T101500Z', '20250315T101500Z', '20250316T101500Z'];
    const { library } = await setUp(
      Object.fromEntries(ids.map((runId) => [runId, logText(bodiesOf(runId, 1))])),
    );
    const listed = async (...except: string[]) => {
      const runs = await library.list(new Set(except));
      return runs.ok && runs.value.map(({ runId }) => runId);
    };
    const [first, second, third] = ids;
    expect(await listed()).toEqual([third, second, first]);
    expect(await listed('20250315T101500Z')).toEqual([third, first]);
  });

  test('a run that was put in the bin is no run of the library, and one that is put back is', async () => {
    const { library } = await setUp({ whole: logText(bodiesOf('whole', 3)) });
    expect((await library.summary('whole')).ok).toBe(true);
    expect((await library.trash('whole')).ok).toBe(true);
    expect(await library.summary('whole')).toEqual({
      ok: false,
      error: { kind: 'run-not-found', runId: 'whole' },
    });
    expect(await library.restore('whole')).toEqual({ ok: true, value: 'whole' });
    expect(await library.summary('whole')).toMatchObject({ value: { summary: { readings: 3 } } });
  });

  test('the last recorded run is the newest that was recorded here, whatever lies beside it', async () => {
    const imported: LogBody = {
      kind: 'header',
      header: { ...logHeader('20250317T101500Z'), origin: 'imported' },
    };
    const texts = {
      '20250314T101500Z': logText(bodiesOf('20250314T101500Z', 1)),
      '20250315T101500Z': logText(bodiesOf('20250315T101500Z', 2)),
      '20250316T101500Z': 'no log at all\n',
      '20250317T101500Z': logText([imported, ...readings(3)]),
    };
    const last = await (await setUp(texts)).library.lastRecorded();
    expect(last?.summary).toMatchObject({ runId: '20250315T101500Z', readings: 2 });
    const [, , unreadable, other] = Object.entries(texts);
    const none = await setUp(Object.fromEntries([unreadable ?? [], other ?? []]));
    expect(await none.library.lastRecorded()).toBeNull();
  });

  test('at the start every torn end is put aside, and whole runs are left as they are', async () => {
    const text = logText(bodiesOf('torn', 4));
    const { runsFolder, library } = await setUp({
      torn: text.slice(0, -30),
      'torn-too': logText(bodiesOf('torn-too', 3)).slice(0, -10),
      whole: logText(bodiesOf('whole', 4)),
    });
    await library.recoverAll();
    const names = async (runId: string) =>
      (await readdir(path.join(runsFolder, runId))).filter((name) => name.includes('torn-at'));
    expect([
      (await names('torn')).length,
      (await names('torn-too')).length,
      await names('whole'),
    ]).toEqual([1, 1, []]);
    expect(await library.summary('torn')).toMatchObject({ value: { hasTornEnd: false } });
  });

  test('the conclusions of a run that is not there, or that the disk does not give, are a problem and not none', async () => {
    const { runsFolder, clock } = await setUp({ whole: logText(bodiesOf('whole', 3)) });
    const disk = breakableDisk();
    const library = createRunLibrary({
      files: disk.files,
      clock,
      runsFolder,
      mayWrite: () => true,
    });
    expect(await library.changes('whole')).toEqual({
      ok: true,
      value: { changes: [], modelVersions: ['1'] },
    });
    expect(await library.changes('../whole')).toMatchObject({ error: { kind: 'run-not-found' } });
    expect(await library.changes('none-such')).toMatchObject({ ok: false });
    disk.breakDown();
    expect(await library.changes('whole')).toMatchObject({ ok: false });
  });

  test('lists nothing but runs', async () => {
    const { runsFolder, library } = await setUp({ run: logText(bodiesOf('run', 2)) });
    await mkdir(path.join(runsFolder, 'trash', 'run'), { recursive: true });
    await mkdir(path.join(runsFolder, 'holiday pictures'));
    await writeFile(
      path.join(runsFolder, 'holiday pictures', 'run.jsonl'),
      logText(bodiesOf('x', 1)),
    );
    await mkdir(path.join(runsFolder, 'empty'));
    await writeFile(path.join(runsFolder, 'readme.txt'), '');
    const listed = await library.list();
    expect(listed.ok && listed.value.map(({ runId }) => runId)).toEqual(['run']);
  });

  test('what the disk does not give is a problem, and neither an empty library, an empty bin nor a run without additions', async () => {
    const { runsFolder, clock } = await setUp({ whole: logText(bodiesOf('whole', 3)) });
    let broken = '';
    const failed = (target: string) =>
      ({ ok: false, error: { kind: 'failed', path: target, message: 'EIO' } }) as const;
    const isBroken = (target: string) => path.basename(target) === broken;
    const files: FileLayer = {
      ...nodeFileLayer,
      list: async (target) => (isBroken(target) ? failed(target) : nodeFileLayer.list(target)),
      read: async (target, offset, length) =>
        isBroken(target) ? failed(target) : nodeFileLayer.read(target, offset, length),
    };
    const library = createRunLibrary({ files, clock, runsFolder, mayWrite: () => true });
    await library.rename('whole', { name: 'Pear', notes: '' });
    const known = await library.summary('whole');
    if (!known.ok) expect.fail(known.error.kind);
    const live = { known: known.value, unsaved: [] };
    expect(await library.trashed()).toEqual({ ok: true, value: [] });
    broken = path.basename(runsFolder);
    expect(await library.list()).toMatchObject({ ok: false });
    expect(await library.lastRecorded()).toBeNull();
    broken = 'trash';
    expect(await library.trashed()).toMatchObject({ ok: false });
    broken = 'labels.jsonl';
    expect(await library.page('whole', 0)).toMatchObject({ ok: false });
    expect(await library.whole('whole', live)).toMatchObject({ ok: false });
    broken = '';
    expect(await library.whole('whole', live)).toMatchObject({ ok: true });
  });
});

describe('checkRuns', () => {
  test('tells whole, cut-off, damaged and unreadable runs apart and changes nothing', async () => {
    const text = logText(bodiesOf('whole', 4));
    const { runsFolder } = await setUp({
      damaged: text.replace('"head",20.125]', '"head",29.125]'),
      torn: text.slice(0, -30),
      unreadable: 'no log at all\n',
      whole: text,
    });
    const checks: RunCheck[] = [];
    for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
    expect(
      checks.map(({ runId, state, readings, missingRecords }) =>
        [runId, state, readings, missingRecords].join(' '),
      ),
    ).toEqual([
      'damaged damaged 3 1',
      'torn torn 4 0',
      'unreadable unreadable 0 0',
      'whole whole 4 0',
    ]);
    expect(await readdir(path.join(runsFolder, 'torn'))).toEqual(['run.jsonl']);
  });
});
