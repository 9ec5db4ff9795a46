import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { bookEntriesSchema } from '../../../shared-core/bookkeeping/book-entries.ts';
import { columnMappingSchema } from '../../../shared-core/csv/column-mapping.ts';
import { decodeRecord } from '../../../shared-core/run-log/decode-record.ts';
import { logBodySchema } from '../../../shared-core/run-log/log-record.ts';

const root = path.join(import.meta.dirname, '../../..');
const pageOf = (folder: string) => readFileSync(path.join(root, folder, 'FORMAT.md'), 'utf8');
const examplesOn = (page: string) =>
  [...page.matchAll(/```jsonl?\n([\s\S]*?)\n```/g)].map(([, example = '']) => example);

describe('the page on the format of the run log', () => {
  const page = pageOf('shared-core/run-log');

  test('shows a line that the reader takes as whole, checksum and all', () => {
    const [line = '', ...others] = examplesOn(page);
    expect(others).toEqual([]);
    expect(decodeRecord(line)?.record.body).toEqual({
      kind: 'readings',
      readings: [[6.125, 'head', 78.1875]],
    });
  });

  test('names every kind of record there is, and no other', () => {
    const named = [...page.matchAll(/^\| `([a-z-]+)`\s+\| (?!holds)/gm)].map(([, kind]) => kind);
    const kinds = logBodySchema.options.map(({ shape }) => shape.kind.value);
    expect(named.sort()).toEqual([...kinds].sort());
  });
});

test('the page on the pack shows books that can be read', () => {
  const [books = '', ...others] = examplesOn(pageOf('main/export/pack'));
  expect(others).toEqual([]);
  expect(bookEntriesSchema.safeParse(JSON.parse(books)).error).toBeUndefined();
});

test('the page on tables shows a mapping of columns that can be read', () => {
  const [mapping = '', ...others] = examplesOn(pageOf('shared-core/csv'));
  expect(others).toEqual([]);
  expect(columnMappingSchema.safeParse(JSON.parse(mapping)).error).toBeUndefined();
});
