import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { usualWarmthBand as band, fail } from '#shared-core';
import { doubtfulFerments } from '../../../main/ferments/doubtful-ferments.ts';
import { createFermentArchive } from '../../../main/ferments/ferment-archive.ts';
import { createFermentMemory } from '../../../main/ferments/ferment-memory.ts';
import { createWarmthFiles } from '../../../main/ferments/warmth-file.ts';
import { warmthLog } from '../../../main/ferments/warmth-lines.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const { clock } = createManualTime();
const nowIso = new Date(clock.wallMs()).toISOString();

async function withFerment() {
  const runsFolder = await temporaryFolder();
  const files = nodeFileLayer;
  const memory = createFermentMemory({ files, clock, runsFolder, mayWrite: () => true });
  const begun = await memory.begin({
    name: 'Pear juice',
    beganAtIso: nowIso,
    volumeMl: 1000,
    sugarG: null,
    wentIn: '',
  });
  if (!begun.ok) throw new Error(JSON.stringify(begun.error));
  return { runsFolder, fermentId: begun.value.fermentId, kept: begun.value };
}

test('a ferment is read with how warm it was kept, the minute under way among it', async () => {
  const { runsFolder, fermentId, kept } = await withFerment();
  const archive = createFermentArchive(nodeFileLayer, runsFolder);
  expect(await archive.read(fermentId)).toEqual({
    ok: true,
    value: { kept, warmth: { band: null, minutes: [] } },
  });
  const warmth = createWarmthFiles(nodeFileLayer, runsFolder);
  const spanC = { lowC: 29, meanC: 30, highC: 31 };
  await warmth.add(fermentId, [
    { kind: 'keep', ...warmthLog, keptAtIso: nowIso, band, channel: 'ferment', source: null },
    { kind: 'minute', atIso: '2025-03-14T10:15:00.000Z', ...spanC, minutes: 1 },
  ]);
  const underWay = { atIso: '2025-03-14T10:16:00.000Z', ...spanC, readings: 2 };
  await warmth.keepUnderWay(fermentId, underWay);
  expect(await archive.read(fermentId)).toMatchObject({
    value: {
      warmth: { band, minutes: [{ atIso: '2025-03-14T10:15:00.000Z' }, { atIso: underWay.atIso }] },
    },
  });
});

test('one that is not there, or whose first line cannot be read, is refused in words; a broken disk is told as one', async () => {
  const { runsFolder, fermentId } = await withFerment();
  const refused = {
    ok: false,
    error: {
      kind: 'request-invalid',
      message: 'This ferment is not beside the runs, or its first line cannot be read',
    },
  };
  const archive = createFermentArchive(nodeFileLayer, runsFolder);
  expect(await archive.read('none-such')).toMatchObject(refused);
  const broken = (of: string) => async (file: string) =>
    path.basename(file).startsWith(of)
      ? fail({ kind: 'failed', path: file, message: 'EIO' } as const)
      : nodeFileLayer.sizeBytes(file);
  for (const of of ['ferment-', 'warmth-']) {
    const files: FileLayer = { ...nodeFileLayer, sizeBytes: broken(of) };
    expect(await createFermentArchive(files, runsFolder).read(fermentId)).toMatchObject({
      ok: false,
      error: { kind: 'folder-unavailable', message: 'EIO' },
    });
  }
  await writeFile(path.join(runsFolder, `ferment-${fermentId}.jsonl`), 'torn\n');
  expect(await archive.read(fermentId)).toMatchObject(refused);
});

test('files whose beginning cannot be read are doubtful, those of a later version newer; what can be read, and other files, are not told', async () => {
  const { runsFolder } = await withFerment();
  expect(await doubtfulFerments(nodeFileLayer, runsFolder)).toEqual([]);
  const begun = (format: string, version: unknown) =>
    `${JSON.stringify({ kind: 'begun', format, version })}\n`;
  const texts = {
    'ferment-a.jsonl': begun('still-head-ferment-log', 2),
    'ferment-b.jsonl': begun('still-head-ferment-log', 1),
    'ferment-c.jsonl': begun('another-format', 9),
    'ferment-d.jsonl': begun('still-head-ferment-log', 'nine'),
    'ferment-e.jsonl': '',
    'ferment-f.jsonl.part': 'torn',
    'warmth-a.jsonl': begun('still-head-ferment-warmth', 2),
    'warmth-b.jsonl': 'torn',
    'warmth-b.minute.json': 'torn',
  };
  for (const [name, text] of Object.entries(texts)) {
    await writeFile(path.join(runsFolder, name), text);
  }
  const found = await doubtfulFerments(nodeFileLayer, runsFolder);
  expect(Object.fromEntries(found.map(({ name, state }) => [name, state]))).toEqual({
    'ferment-a.jsonl': 'newer',
    'ferment-b.jsonl': 'not-understood',
    'ferment-c.jsonl': 'not-understood',
    'ferment-d.jsonl': 'not-understood',
    'ferment-e.jsonl': 'not-understood',
    'warmth-a.jsonl': 'newer',
    'warmth-b.jsonl': 'not-understood',
  });
  expect(await doubtfulFerments(nodeFileLayer, path.join(runsFolder, 'nowhere'))).toEqual([]);
  const unread: FileLayer = {
    ...nodeFileLayer,
    read: async (file) => fail({ kind: 'failed', path: file, message: 'EIO' }),
  };
  expect(
    (await doubtfulFerments(unread, runsFolder)).filter(({ name }) => name !== 'ferment-e.jsonl'),
  ).toEqual([]);
});
