import { expect, test } from 'vitest';
import { isRunId, newRunId, startOfRunId } from '../../../main/run-library/run-id.ts';

test('the name of a run’s folder leads nowhere else and is no longer than a path bears', () => {
  const names = ['20250314T101500Z', 'a', 'A-2', 'x'.repeat(120)];
  const others = ['', '-a', '.', '..', 'a/b', 'a b', 'a\n', 'ä', 'x'.repeat(121)];
  expect([names.every(isRunId), others.filter(isRunId)]).toEqual([true, []]);
});

test('a new one is the second it begins, with a number from 2 on where that is taken', () => {
  const wallMs = Date.UTC(2025, 2, 14, 10, 15, 3, 999);
  const base = '20250314T101503Z';
  expect([
    newRunId(wallMs, new Set()),
    newRunId(wallMs, new Set([base])),
    newRunId(wallMs, new Set([base, `${base}-2`, `${base}-3`])),
  ]).toEqual([base, `${base}-2`, `${base}-4`]);
});

test('and tells when the run began, unless people renamed it', () => {
  const begun = new Date(Date.UTC(2025, 2, 14, 10, 15, 3));
  const names = ['20250314T101503Z', '20250314T101503Z-12', 'x20250314T101503Z'];
  const others = ['20250314T101503Zx', '20251314T101503Z', 'pear'];
  expect([...names, ...others].map(startOfRunId)).toEqual([begun, begun, null, null, null, null]);
});
