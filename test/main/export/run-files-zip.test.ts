import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { nodeFileLayer, type PackZip, runFilesZip } from '#main';
import { temporaryFolder } from '../support/temporary-folder.ts';

const longText = 'a line of the log\n'.repeat(60_000);

async function runFolder(): Promise<string> {
  const folder = path.join(await temporaryFolder(), '20250314T101503Z');
  await mkdir(path.join(folder, 'not a file of the run'), { recursive: true });
  await writeFile(path.join(folder, 'run.jsonl'), longText);
  await writeFile(path.join(folder, 'labels.jsonl'), 'labels\n');
  return folder;
}

/** A disk that gives nothing of some files from a byte on. */
function badDisk(brokenFrom: Readonly<Record<string, number>>): typeof nodeFileLayer {
  return {
    ...nodeFileLayer,
    async read(file, offset, length) {
      const from = brokenFrom[path.basename(file)] ?? Number.POSITIVE_INFINITY;
      const error = { kind: 'failed', path: file, message: 'EIO: i/o error, read' } as const;
      return offset + length > from
        ? { ok: false, error }
        : nodeFileLayer.read(file, offset, length);
    },
  };
}

async function textsIn({ content }: PackZip): Promise<Record<string, string>> {
  const pieces: Uint8Array[] = [];
  for await (const piece of content) pieces.push(piece);
  const files = unzipSync(Buffer.concat(pieces));
  return Object.fromEntries(Object.entries(files).map(([name, data]) => [name, strFromU8(data)]));
}

test('holds every file of the folder byte for byte', async () => {
  const zip = await runFilesZip(nodeFileLayer, await runFolder(), 0);
  if (!zip.ok) expect.fail(zip.error.message);
  expect(zip.value.fileName).toBe('20250314T101503Z-files.zip');
  expect(await textsIn(zip.value)).toEqual({ 'run.jsonl': longText, 'labels.jsonl': 'labels\n' });
});

test('keeps what a failing disk still gives, and names what it does not', async () => {
  const files = badDisk({ 'run.jsonl': 600_000, 'labels.jsonl': 0 });
  const zip = await runFilesZip(files, await runFolder(), 0);
  if (!zip.ok) expect.fail(zip.error.message);
  const texts = await textsIn(zip.value);
  expect(Object.keys(texts).toSorted()).toEqual(['could-not-be-read.txt', 'run.jsonl']);
  expect(texts['run.jsonl']).toBe(longText.slice(0, 512 * 1024));
  expect(texts['could-not-be-read.txt']?.trim().split('\r\n').toSorted()).toEqual([
    'labels.jsonl: EIO: i/o error, read',
    'run.jsonl: only the first 524288 bytes. EIO: i/o error, read',
  ]);
});

test('fails as the disk does where no file can be read', async () => {
  const zip = await runFilesZip(
    badDisk({ 'run.jsonl': 0, 'labels.jsonl': 0 }),
    await runFolder(),
    0,
  );
  expect(zip).toMatchObject({
    ok: false,
    error: { kind: 'failed', message: expect.stringContaining('EIO') },
  });
});
