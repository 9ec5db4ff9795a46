import { expect, test } from 'vitest';
import { fileProblem, serviceProblemOf } from '#main';

/** As Node words them: libuv's text for the code, the call and the path. */
const thrown = (code: string, words: string) =>
  Object.assign(new Error(`${code}: ${words}, open '/runs/a'`), { code });

test.each([
  ['ENOSPC', 'no space left on device', 'full', 'disk-full'],
  ['EDQUOT', 'disk quota exceeded', 'full', 'disk-full'],
  ['EFBIG', 'file too large', 'full', 'disk-full'],
  ['EACCES', 'permission denied', 'read-only', 'folder-read-only'],
  ['EPERM', 'operation not permitted', 'read-only', 'folder-read-only'],
  ['EROFS', 'read-only file system', 'read-only', 'folder-read-only'],
  ['ENOENT', 'no such file or directory', 'missing', 'folder-unavailable'],
  ['EEXIST', 'file already exists', 'exists', 'folder-unavailable'],
  ['EIO', 'i/o error', 'failed', 'folder-unavailable'],
])('%s (%s) is the problem %s, and %s in the contract', (code, words, kind, service) => {
  const problem = fileProblem(thrown(code, words), '/runs/a');
  expect(problem).toEqual({
    kind,
    path: '/runs/a',
    message: `${code}: ${words}, open '/runs/a'`,
  });
  expect(serviceProblemOf(problem).kind).toBe(service);
});

test('anything else that was thrown still becomes a problem with words', () => {
  expect(fileProblem('odd', '/runs/a')).toEqual({
    kind: 'failed',
    path: '/runs/a',
    message: 'odd',
  });
});
