import { mkdir, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { createRunLibrary, type FileLayer, nodeFileLayer } from '#main';
import { fail, type LogBody } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { logText } from '../support/log-text.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

async function libraryOf(...runIds: readonly string[]) {
  const runsFolder = await temporaryFolder();
  for (const runId of runIds) await writeRun(runsFolder, runId);
  const { clock } = createManualTime();
  const open = (mayWrite = true) =>
    createRunLibrary({ files: nodeFileLayer, clock, runsFolder, mayWrite: () => mayWrite });
  return { runsFolder, open, library: open() };
}

async function writeRun(runsFolder: string, runId: string): Promise<void> {
  const bodies: readonly LogBody[] = [
    { kind: 'header', header: logHeader(runId) },
    { kind: 'readings', readings: [[0, 'head', 20]] },
    { kind: 'end', timeS: 1, how: 'clean' },
  ];
  await mkdir(path.join(runsFolder, runId));
  await writeFile(path.join(runsFolder, runId, 'run.jsonl'), logText(bodies), 'latin1');
}

const idsOf = (listed: { readonly ok: boolean; readonly value?: unknown }) =>
  listed.ok && Array.isArray(listed.value) ? listed.value.map(({ runId }) => runId) : listed;

const [first, second] = ['20260318T091500Z', '20260319T091500Z'];

test('a run that was removed lies in the bin and is put back as it was', async () => {
  const { library } = await libraryOf(first, second);
  const before = await library.summary(first);
  await library.trash(first);
  await library.trash(second);
  expect(idsOf(await library.list())).toEqual([]);
  expect(idsOf(await library.trashed())).toEqual([second, first]);
  expect(await library.restore(first)).toEqual({ ok: true, value: first });
  expect(idsOf(await library.list())).toEqual([first]);
  expect(idsOf(await library.trashed())).toEqual([second]);
  expect(await library.summary(first)).toEqual(before);
});

test('a run whose name was taken meanwhile is put back beside the other', async () => {
  const { library, runsFolder } = await libraryOf(first);
  await library.trash(first);
  await writeRun(runsFolder, first);
  await library.trash(first);
  await writeRun(runsFolder, first);
  expect(idsOf(await library.trashed())).toEqual([`${first}-2`, first]);
  expect(await library.restore(first)).toEqual({ ok: true, value: `${first}-2` });
  expect(idsOf(await library.list())).toEqual([`${first}-2`, first]);
});

test.each([1, 2])(
  'a run that the disk does not surely move stays where it is, and so it is told: sync %i fails',
  async (failing) => {
    const { library, runsFolder } = await libraryOf(first, second);
    await library.trash(second);
    let syncs = 0;
    const files: FileLayer = {
      ...nodeFileLayer,
      async syncFolder(at) {
        // Those of the folders that it goes from and to; a summary may be kept on the way.
        syncs += path.basename(at) === first ? 0 : 1;
        const failed = { kind: 'failed', path: at, message: 'EIO' } as const;
        return syncs === failing ? fail(failed) : nodeFileLayer.syncFolder(at);
      },
    };
    const { clock } = createManualTime();
    const badly = createRunLibrary({ files, clock, runsFolder, mayWrite: () => true });
    const refused = { ok: false, error: { kind: 'run-unreadable', message: 'EIO' } };
    expect(await badly.trash(first)).toMatchObject(refused);
    syncs = 0;
    expect(await badly.restore(second)).toMatchObject(refused);
    expect(idsOf(await badly.list())).toEqual([first]);
    expect(idsOf(await badly.trashed())).toEqual([second]);
    syncs = 2;
    expect(await badly.trash(first)).toEqual({ ok: true, value: undefined });
    expect(await badly.restore(second)).toEqual({ ok: true, value: second });
  },
);

test('nothing is put back that is no run of the bin, and nothing by who may not write', async () => {
  const { library, open, runsFolder } = await libraryOf(first);
  expect(idsOf(await library.trashed())).toEqual([]);
  await library.trash(first);
  for (const runId of ['..', second, 'trash', `../${first}`]) {
    expect(await library.restore(runId)).toEqual({
      ok: false,
      error: { kind: 'run-not-found', runId },
    });
  }
  expect(await open(false).restore(first)).toMatchObject({
    ok: false,
    error: { kind: 'folder-in-use' },
  });
  await rm(path.join(runsFolder, 'trash'), { recursive: true });
  expect(idsOf(await library.trashed())).toEqual([]);
});
