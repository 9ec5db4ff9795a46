import { mkdir, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { createRunLibrary, type FileLayer, nodeFileLayer, segmentFile } from '#main';
import { encodeRecord, firstPreviousChecksum, type LogBody, succeed } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runId = 'run';
const header = logHeader(runId);
const reading = (timeS: number): LogBody => ({
  kind: 'readings',
  readings: [[timeS, 'head', 20]],
});

/** One log file; its first record has the number `firstSeq`. */
function logText(firstSeq: number, bodies: readonly LogBody[]): string {
  let previous = firstPreviousChecksum;
  return bodies
    .map((body, index) => {
      const seq = firstSeq + index;
      const { line, checksum } = encodeRecord(body, { seq, monoS: seq, wallMs: seq }, previous);
      previous = checksum;
      return line;
    })
    .join('');
}

async function readTimesS(runsFolder: string, files: FileLayer) {
  const { clock } = createManualTime();
  const library = createRunLibrary({ files, clock, runsFolder, mayWrite: () => false });
  const page = await library.page(runId, 0);
  return page.ok ? page.value.inputs.map(({ timeS }) => timeS) : page.error;
}

async function runFolder() {
  const runsFolder = await temporaryFolder();
  const folder = path.join(runsFolder, runId);
  await mkdir(folder);
  const first = logText(0, [{ kind: 'header', header }, reading(1), reading(2)]);
  await writeFile(path.join(folder, segmentFile(1)), first, 'latin1');
  return { runsFolder, folder };
}

test('a run is read while the recorder begins files on a full disk and takes them away again', async () => {
  const { runsFolder } = await runFolder();
  let segment = 1;
  const list: FileLayer['list'] = async (target) => {
    const listed = await nodeFileLayer.list(target);
    segment += 1;
    const begun = { name: segmentFile(segment), isFolder: false };
    return listed.ok ? succeed([...listed.value, begun]) : listed;
  };
  expect(await readTimesS(runsFolder, { ...nodeFileLayer, list })).toEqual([1, 2]);
});

test('a run put in the trash while it is read is not taken for a shorter one', async () => {
  const { runsFolder, folder } = await runFolder();
  const second = segmentFile(2);
  const goesOn = { kind: 'segment', segment: 2, because: 'a failed sync', header } as const;
  await writeFile(path.join(folder, second), logText(2, [goesOn, reading(3)]), 'latin1');
  expect(await readTimesS(runsFolder, nodeFileLayer)).toEqual([1, 2, 3]);
  let looks = 0;
  const read: FileLayer['read'] = async (target, offset, length) => {
    if (path.basename(target) === second) {
      looks += 1;
      // Three looks for the summary, one at the beginning; this one is for what is in it.
      if (looks === 5) await rename(folder, path.join(runsFolder, 'elsewhere'));
    }
    return nodeFileLayer.read(target, offset, length);
  };
  expect(await readTimesS(runsFolder, { ...nodeFileLayer, read })).toEqual({
    kind: 'run-not-found',
    runId,
  });
});
