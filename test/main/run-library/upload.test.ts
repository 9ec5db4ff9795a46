import { expect, test } from 'vitest';
import { contractLimits } from '#shared-core';
import { createUploads } from '../../../main/run-library/upload.ts';

const bytes = (...values: readonly number[]) => Uint8Array.from(values);
const refused = (message: string) => ({ ok: false, error: { kind: 'request-invalid', message } });

function begun(size: number) {
  const uploads = createUploads();
  const answer = uploads.begin(size);
  if (!answer.ok) throw new Error('It begins.');
  return { uploads, importId: answer.value };
}

test('a file comes piece by piece and is taken whole, once', () => {
  const { uploads, importId } = begun(5);
  expect([
    uploads.add(importId, bytes(1, 2)),
    uploads.add(importId, bytes(3, 4, 5)),
    uploads.take(importId),
    uploads.take(importId),
  ]).toEqual([
    { ok: true, value: 2 },
    { ok: true, value: 5 },
    { ok: true, value: bytes(1, 2, 3, 4, 5) },
    refused('the file is no longer here; choose it again'),
  ]);
});

test('a file that has not come whole, has grown or is too large is refused, and let go of', () => {
  const short = begun(3);
  short.uploads.add(short.importId, bytes(1, 2));
  const grown = begun(1);
  expect([
    short.uploads.take(short.importId),
    grown.uploads.add(grown.importId, bytes(1, 2)),
    grown.uploads.add(grown.importId, bytes(1)),
    createUploads().begin(contractLimits.importBytes + 1),
    createUploads().begin(contractLimits.importBytes).ok,
  ]).toEqual([
    refused('the file has not come whole; choose it again'),
    refused('the file grew while it was being read; choose it again'),
    refused('the file is no longer here; choose it again'),
    refused('the file is too large'),
    true,
  ]);
});

test('a new file replaces the last; one that was dropped is gone, and no other with it', () => {
  const { uploads, importId } = begun(1);
  const next = uploads.begin(1);
  if (!next.ok) throw new Error('It begins.');
  expect(uploads.add(importId, bytes(1)).ok).toBe(false);
  uploads.drop(importId);
  expect(uploads.add(next.value, bytes(1)).ok).toBe(true);
  uploads.drop(next.value);
  expect(uploads.take(next.value).ok).toBe(false);
});
