import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import {
  defaultRunSettings,
  type RequestBody,
  type RequestName,
  requests,
  setUpSchema,
  usualWarmthBand,
} from '#shared-core';
import { nothingRead } from '../../support/nothing-read.ts';
import { diskAtRest } from '../support/manual-time.ts';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';

const charge = { volumeMl: 350, strengthAbv: 9 };
const table = Buffer.from('time_s,head_c\n0,20\n1,21\n');
const begunIso = '2025-03-13T09:00:00.000Z';

/** A body that would do for every request of the contract: a request that is added states one too. */
function bodies(
  runId: string,
  fermentId: string,
  importId: string,
): { readonly [N in RequestName]: RequestBody<N> } {
  const packId = 'pack';
  return {
    'app/describe': {},
    'app/open-second-screen': {},
    'folder/make-anew': {},
    'class-view/status': {},
    'class-view/open': {},
    'class-view/shut': {},
    'kept-files/doubtful': {},
    'problem-report/make': { withRunNames: true, window: null },
    'ports/list': {},
    'probe/status': {},
    'probe/disconnect': {},
    'probe/find': { path: '/dev/ttyACM7' },
    'probe/connect': { source: { kind: 'serial', path: '/dev/ttyACM7' } },
    'run/status': {},
    'run/start': { settings: defaultRunSettings },
    'run/unfinished': {},
    'run/continue': { runId },
    'run/mark': { mark: { type: 'heat-off' } },
    'run/stop': {},
    'runs/list': {},
    'runs/read': { runId, fromIndex: 0 },
    'runs/changes': { runId },
    'runs/correct': {
      runId,
      correction: {
        charge: { ...charge, standardUncertaintyAbv: 0.5 },
        reason: 'misread at the bench',
      },
    },
    'runs/rename': { runId, name: 'Mine', notes: '' },
    'runs/book': { runId, mark: { type: 'mark-withdrawn', withdrawnMarkId: 1 } },
    'runs/trash': { runId },
    'runs/trashed': {},
    'runs/restore': { runId },
    'imports/begin': { bytes: table.length },
    'imports/add': {
      importId,
      base64: table.toString('base64'),
    },
    'imports/finish': {
      importId,
      encoding: 'auto',
      mapping: null,
      settings: defaultRunSettings,
    },
    'imports/cancel': { importId },
    'packs/make': { packId, runIds: [runId] },
    'packs/make-ferments': { packId, fermentIds: [fermentId] },
    'packs/make-files': { packId, runId },
    'packs/make-table': { packId, runId, format: 'csv' },
    'packs/read': { packId, fromByte: 0 },
    'packs/drop': { packId },
    'rigs/list': {},
    'rigs/keep': { name: 'Lab 2', setUp: setUpSchema.parse({ name: 'Pear', charge }) },
    'rigs/forget': { name: 'Lab 1' },
    'warmth/now': {},
    'warmth/report': { fermentId },
    'warmth/keep': { fermentId, band: usualWarmthBand, channel: 'ferment' },
    'warmth/leave': { fermentId },
    'ferments/list': {},
    'ferments/begin': {
      stated: {
        name: 'Pear juice',
        beganAtIso: begunIso,
        volumeMl: 1000,
        sugarG: null,
        wentIn: '',
      },
    },
    'ferments/correct': {
      fermentId,
      stated: {
        name: 'Pear juice',
        beganAtIso: begunIso,
        volumeMl: 1200,
        sugarG: null,
        wentIn: '',
      },
      reason: 'misread',
    },
    'ferments/enter': {
      fermentId,
      read: {
        ...nothingRead,
        atIso: begunIso,
        gravity: { indicated: 1.02, temperatureC: 20 },
      },
    },
    'ferments/withdraw': { fermentId, entryId: 1 },
  };
}

/** What changes the folder, and is another program's to do while it has it. */
const refusedAsInUse: readonly RequestName[] = [
  'run/start',
  'run/continue',
  'runs/correct',
  'runs/rename',
  'runs/book',
  'runs/trash',
  'runs/restore',
  'warmth/keep',
  'imports/finish',
  'rigs/keep',
  'rigs/forget',
  'ferments/begin',
  'ferments/correct',
  'ferments/enter',
  'ferments/withdraw',
];

/** Files whose every change below the folder is noted, whatever came of it. */
function noting(runsFolder: string, changes: string[]): Partial<FileLayer> {
  const note = (kind: string, at: string) => {
    if (at.startsWith(runsFolder)) changes.push(`${kind} ${path.relative(runsFolder, at)}`);
  };
  const noted =
    <R>(kind: string, act: (at: string) => R) =>
    (at: string) => {
      note(kind, at);
      return act(at);
    };
  return {
    claimFolder: noted('claimed', nodeFileLayer.claimFolder),
    createAppend: noted('made', nodeFileLayer.createAppend),
    openAppend: noted('opened', nodeFileLayer.openAppend),
    remove: noted('removed', nodeFileLayer.remove),
    rename(from, to) {
      note('renamed', from);
      return nodeFileLayer.rename(from, to);
    },
    truncate(at, length) {
      note('cut', at);
      return nodeFileLayer.truncate(at, length);
    },
  };
}

async function contents(folder: string): Promise<Record<string, string>> {
  const names = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = names.filter((entry) => entry.isFile());
  const at = files.map(({ parentPath, name }) => path.join(parentPath, name)).sort();
  // The owner's life sign is the owner's.
  const kept = at.filter((file) => !path.basename(file).startsWith('.'));
  const texts = await Promise.all(kept.map((file) => readFile(file, 'latin1')));
  return Object.fromEntries(kept.map((file, index) => [file, texts[index] ?? '']));
}

test('of all requests there are, none of a second program changes a file of the folder that the first records into', async () => {
  const first = await setUpSession();
  const { session, runsFolder, time, probeHub } = first;
  const past = await ask(session, 'run/start', { settings: defaultRunSettings });
  probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
  await ask(session, 'run/stop', {});
  const ferment = await ask(session, 'ferments/begin', {
    stated: { ...bodies('', '', '')['ferments/begin'].stated },
  });
  await ask(session, 'ferments/enter', bodies('', ferment.fermentId, '')['ferments/enter']);
  await ask(session, 'rigs/keep', { ...bodies('', '', '')['rigs/keep'], name: 'Lab 1' });
  const underWay = await ask(session, 'run/start', { settings: defaultRunSettings });
  probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
  await ask(session, 'runs/list', {});
  // What the first is writing is its own: it is all there before the second comes.
  await diskAtRest();
  const before = await contents(runsFolder);

  for (const { runId } of [past, underWay]) {
    const changes: string[] = [];
    const second = await setUpSession({ runsFolder, faults: noting(runsFolder, changes) });
    const refused: RequestName[] = [];
    let importId = 'none';
    for (const name of Object.keys(bodies('', '', '')) as RequestName[]) {
      const body = bodies(runId, ferment.fermentId, importId)[name];
      expect(requests[name].body.safeParse(body).error, name).toBeUndefined();
      const result = await second.session.handle(name, body, teacher);
      if (!result.ok && result.error.kind === 'folder-in-use') refused.push(name);
      if (result.ok && name === 'imports/begin') {
        importId = requests[name].answer.parse(result.value).importId;
      }
    }
    await second.session.close();
    expect(refused.sort()).toEqual([...refusedAsInUse].sort());
    expect(changes).toEqual([]);
  }
  expect(await contents(runsFolder)).toEqual(before);
});
