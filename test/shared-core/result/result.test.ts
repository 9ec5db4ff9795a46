import { expect, test } from 'vitest';
import { fail, succeed } from '../../../shared-core/result/result.ts';

test('success carries its value, failure its error', () => {
  expect([succeed(78.4), fail({ kind: 'silent' })]).toEqual([
    { ok: true, value: 78.4 },
    { ok: false, error: { kind: 'silent' } },
  ]);
});
