import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { emptyReport, nodeFileLayer, readRunLog } from '#main';
import { encodeRecord, firstPreviousChecksum, type LogBody } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const header = logHeader();

interface Line {
  readonly seq: number;
  readonly body: LogBody;
}

const opened: Line = { seq: 0, body: { kind: 'header', header } };
const goesOn = (segment: number, seq: number): Line => ({
  seq,
  body: { kind: 'segment', segment, because: 'a failed sync', header },
});
const reading = (seq: number): Line => ({
  seq,
  body: { kind: 'readings', readings: [[seq, 'head', 20 + seq]] },
});

/** The text of a log file; lines named in `lost` were zeroed by a loss of power. */
function fileOf(lines: readonly Line[], lost: readonly number[] = []): string {
  let previous = firstPreviousChecksum;
  return lines
    .map(({ seq, body }, index) => {
      const { line, checksum } = encodeRecord(body, { seq, monoS: seq, wallMs: seq }, previous);
      previous = checksum;
      return lost.includes(index) ? '\0'.repeat(line.length) : line;
    })
    .join('');
}

async function read(files: Readonly<Record<string, string>>, layer = nodeFileLayer) {
  const folder = await temporaryFolder();
  for (const [name, text] of Object.entries(files)) {
    await writeFile(path.join(folder, name), text, 'latin1');
  }
  const report = emptyReport();
  const seqs: number[] = [];
  for await (const records of readRunLog(layer, folder, report)) {
    for (const { body, stamp } of records) if (body.kind === 'readings') seqs.push(stamp.seq);
  }
  return { seqs, missing: report.missingRecords, torn: report.torn.map(({ file }) => file) };
}

describe('readRunLog', () => {
  test('reads records that stand in two files once', async () => {
    const first = fileOf([opened, reading(1), reading(2), reading(3)]);
    const second = fileOf([goesOn(2, 1), reading(2), reading(3), reading(4)]);
    expect(await read({ 'run.jsonl': first, 'run-2.jsonl': second })).toEqual({
      seqs: [1, 2, 3, 4],
      missing: 0,
      torn: [],
    });
  });

  test('reads each file once, and a few kilobytes of the later ones to know where they begin', async () => {
    let bytes = 0;
    const counting: typeof nodeFileLayer = {
      ...nodeFileLayer,
      async read(at, offset, length) {
        const found = await nodeFileLayer.read(at, offset, length);
        if (found.ok) bytes += found.value.length;
        return found;
      },
    };
    const upTo = (from: number, to: number) =>
      Array.from({ length: to - from }, (_, index) => reading(from + index));
    const first = fileOf([opened, ...upTo(1, 2000)]);
    const second = fileOf([goesOn(2, 1990), ...upTo(1991, 4000)]);
    const { seqs } = await read({ 'run.jsonl': first, 'run-2.jsonl': second }, counting);
    expect(seqs).toHaveLength(3999);
    expect(first.length + second.length).toBeGreaterThan(400_000);
    expect(bytes - first.length - second.length).toBeLessThan(10_000);
  });

  test('fills holes at the end of a file from the next one', async () => {
    const first = fileOf([opened, reading(1), reading(2), reading(3), reading(4)], [2, 3]);
    const second = fileOf([goesOn(2, 1), reading(2), reading(3), reading(4), reading(5)]);
    expect(await read({ 'run.jsonl': first, 'run-2.jsonl': second })).toEqual({
      seqs: [1, 2, 3, 4, 5],
      missing: 0,
      torn: [],
    });
  });

  test('fills them even when a file between has lost its beginning', async () => {
    const first = fileOf([opened, reading(1), reading(2), reading(3), reading(4)], [2, 3]);
    const second = fileOf([goesOn(2, 1), reading(2)], [0, 1]);
    const third = fileOf([goesOn(3, 1), reading(2), reading(3), reading(4), reading(5)]);
    expect(await read({ 'run.jsonl': first, 'run-2.jsonl': second, 'run-3.jsonl': third })).toEqual(
      { seqs: [1, 2, 3, 4, 5], missing: 0, torn: ['run-2.jsonl'] },
    );
  });

  test('counts records that are in none of the files', async () => {
    const first = fileOf([opened, reading(1), reading(2), reading(3), reading(4)], [2]);
    const second = fileOf([goesOn(2, 4), reading(5), reading(6), reading(7)], [1]);
    expect(await read({ 'run.jsonl': first, 'run-2.jsonl': second })).toEqual({
      seqs: [1, 3, 4, 6, 7],
      missing: 2,
      torn: [],
    });
  });

  test('puts the tenth file after the ninth and leaves other files alone', async () => {
    const files: Record<string, string> = { 'run.jsonl': fileOf([opened, reading(1)]) };
    for (let segment = 2; segment <= 11; segment += 1) {
      files[`run-${segment}.jsonl`] = fileOf([goesOn(segment, segment - 1), reading(segment)]);
    }
    files['run-02.jsonl'] = fileOf([goesOn(2, 90), reading(91)]);
    files['run.jsonl.torn-at-9'] = fileOf([goesOn(2, 90), reading(91)]);
    expect((await read(files)).seqs).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
  });
});
