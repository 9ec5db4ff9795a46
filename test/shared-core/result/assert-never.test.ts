import { expect, test } from 'vitest';
import { assertNever } from '../../../shared-core/result/assert-never.ts';

test('a case that the compiler was told could not be names itself in the bug report', () => {
  const stranger: never = { kind: 'unheard-of' } as never;
  expect(() => assertNever(stranger)).toThrow('Unhandled case: {"kind":"unheard-of"}');
});
