import { appendFile, mkdir, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { createRunLibrary, type FileLayer, nodeFileLayer, pageInputs } from '#main';
import { encodeRecord, firstPreviousChecksum, type LogBody } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runId = '20250314T101500Z';
const header = logHeader(runId);

const reading = (timeS: number): LogBody => ({
  kind: 'readings',
  readings: [[timeS, 'head', 20]],
});
const arrived = (timeS: number): LogBody => ({
  kind: 'change',
  change: { kind: 'event', timeS, event: { event: 'vapour-arrived', timeS, because: '' } },
});
const stamp = (seq: number) => ({ seq, monoS: seq, wallMs: seq });
const readings = (from: number, count: number): readonly LogBody[] =>
  Array.from({ length: count }, (_, index) => reading(from + index));

/** The lines of a log file whose first record has that number. */
function logText(firstSeq: number, bodies: readonly LogBody[], afterChecksum: string) {
  let checksum = afterChecksum;
  const lines = bodies.map((body, index) => {
    const encoded = encodeRecord(body, stamp(firstSeq + index), checksum);
    checksum = encoded.checksum;
    return encoded.line;
  });
  return { text: lines.join(''), checksum };
}

/** A run on a real disk, to which a test adds, and libraries that count the bytes they read of it. */
async function setUp() {
  const runsFolder = await temporaryFolder();
  const folder = path.join(runsFolder, runId);
  await mkdir(folder);
  const ends = new Map<string, string>();

  function openLibrary() {
    const read = { bytes: 0 };
    const files: FileLayer = {
      ...nodeFileLayer,
      async read(at, offset, length) {
        const found = await nodeFileLayer.read(at, offset, length);
        if (found.ok) read.bytes += found.value.length;
        return found;
      },
    };
    const { clock } = createManualTime();
    const library = createRunLibrary({ files, clock, runsFolder, mayWrite: () => true });
    return {
      read,
      library,
      async page(fromIndex: number) {
        const found = await library.page(runId, fromIndex);
        if (!found.ok) throw new Error(found.error.kind);
        return found.value.inputs.map(({ timeS }) => timeS);
      },
      async changes() {
        const found = await library.changes(runId);
        if (!found.ok) throw new Error(found.error.kind);
        return found.value.changes.map(({ timeS }) => timeS);
      },
    };
  }

  return {
    folder,
    openLibrary,
    async add(file: string, firstSeq: number, bodies: readonly LogBody[]): Promise<void> {
      const { text, checksum } = logText(firstSeq, bodies, ends.get(file) ?? firstPreviousChecksum);
      ends.set(file, checksum);
      await appendFile(path.join(folder, file), text, 'latin1');
    },
    async begin(bodies: readonly LogBody[]): Promise<void> {
      const { text, checksum } = logText(
        0,
        [{ kind: 'header', header }, ...bodies],
        firstPreviousChecksum,
      );
      ends.set('run.jsonl', checksum);
      await writeFile(path.join(folder, 'run.jsonl'), text, 'latin1');
    },
  };
}

test('several windows read pages of one run, and none of them makes another read it again', async () => {
  const { begin, openLibrary } = await setUp();
  await begin(readings(0, 6 * pageInputs));
  const { library, page, read } = openLibrary();
  await library.summary(runId);
  read.bytes = 0;
  for (let index = 0; index <= 6; index += 1) await page(index * pageInputs);
  const once = read.bytes;
  read.bytes = 0;
  // One a page behind the other.
  for (let index = 1; index <= 6; index += 1) {
    expect((await page(index * pageInputs))[0] ?? index * pageInputs).toBe(index * pageInputs);
    expect((await page((index - 1) * pageInputs))[0]).toBe((index - 1) * pageInputs);
  }
  expect(read.bytes).toBeLessThan(2.2 * once);
  read.bytes = 0;
  expect(await page(6 * pageInputs - 3)).toHaveLength(3);
  expect(read.bytes).toBeLessThan(once / 6);
});

test('what was concluded in a run under way is read once, and then what has come since', async () => {
  const { begin, add, openLibrary } = await setUp();
  await begin([...readings(0, 20_000), arrived(5)]);
  const { changes, read } = openLibrary();
  expect(await changes()).toEqual([5]);
  const once = read.bytes;
  await add('run.jsonl', 20_002, [reading(6), arrived(7)]);
  read.bytes = 0;
  expect(await Promise.all([changes(), changes(), changes()])).toEqual([
    [5, 7],
    [5, 7],
    [5, 7],
  ]);
  expect(read.bytes).toBeLessThan(once / 20);
});

test('a run that was read before is told as one that is read for the first time, whatever came to it meanwhile', async () => {
  const { folder, begin, add, openLibrary } = await setUp();
  const kept = openLibrary();
  const everything = async ({ page, changes }: typeof kept) => [
    await page(0),
    await page(450),
    await page(900),
    await changes(),
  ];
  const isToldAlike = async () =>
    expect(await everything(kept)).toEqual(await everything(openLibrary()));
  await begin([...readings(0, 900), arrived(900)]);
  await isToldAlike();
  // The next file repeats what may not be saved; the first ends in the middle of a record.
  await appendFile(path.join(folder, 'run.jsonl'), '{"seq":902,"mono', 'latin1');
  await isToldAlike();
  const segment = { kind: 'segment', segment: 2, because: '', header } as const;
  await add('run-2.jsonl', 899, [segment]);
  await isToldAlike();
  await add('run-2.jsonl', 900, [reading(899), arrived(900), ...readings(901, 20), arrived(921)]);
  await isToldAlike();
  await add('run-2.jsonl', 923, readings(930, 500));
  await isToldAlike();
  // Damage in the middle, and a later file that holds what was lost there.
  await add('run-2.jsonl', 1425, [reading(1500), arrived(1501)]);
  await isToldAlike();
  await add('run-3.jsonl', 1422, [{ ...segment, segment: 3 }]);
  await add('run-3.jsonl', 1423, [arrived(1498), arrived(1499), reading(1500), arrived(1501)]);
  await isToldAlike();
  // Another run of the same name.
  await rm(folder, { recursive: true });
  await mkdir(folder);
  await begin([...readings(5000, 950), arrived(6000)]);
  await isToldAlike();
});
