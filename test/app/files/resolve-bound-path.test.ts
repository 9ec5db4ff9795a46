import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { isInsideFolder, resolveBoundPath } from '../../../app/files/resolve-bound-path.ts';

const folder = path.resolve('/srv/window');

describe('resolveBoundPath', () => {
  test.each([
    ['/', 'index.html'],
    ['/index.html', 'index.html'],
    ['/assets/main-1a2b.js', 'assets/main-1a2b.js'],
    ['/assets/', 'assets/index.html'],
    ['/a%20b.svg', 'a b.svg'],
    ['/...hidden', '...hidden'],
  ])('names a file inside the folder: %s', (address, file) => {
    expect(resolveBoundPath(folder, address)).toEqual({ ok: true, value: path.join(folder, file) });
  });

  test.each([
    ['/../secret', 'outside-folder'],
    ['/assets/../../secret', 'outside-folder'],
    ['/..%2fsecret', 'outside-folder'],
    ['/..%2Fsecret', 'outside-folder'],
    ['/%2e%2e/secret', 'outside-folder'],
    ['/%2E%2e%2Fsecret', 'outside-folder'],
    ['/./index.html', 'outside-folder'],
    ['/%252e%252e%252fsecret', 'malformed-address'],
    ['/..\\secret', 'malformed-address'],
    ['/..%5csecret', 'malformed-address'],
    ['/index.html%00.png', 'malformed-address'],
    ['/%0aindex.html', 'malformed-address'],
    ['/C:/Windows/win.ini', 'malformed-address'],
    ['/index.html::$DATA', 'malformed-address'],
    ['/%E0%A4%A', 'malformed-address'],
    ['index.html', 'malformed-address'],
    ['', 'malformed-address'],
    ['http://elsewhere.example/index.html', 'malformed-address'],
  ])('refuses %s as %s', (address, kind) => {
    expect(resolveBoundPath(folder, address)).toEqual({ ok: false, error: { kind, address } });
  });
});

test('a folder is not inside itself, nor is a sibling that shares its first letters', () => {
  expect(
    ['/srv/window', '/srv/window-old/a', '/srv', '/srv/window/a', '/srv/window/a/b'].map((file) =>
      isInsideFolder(folder, path.resolve(file)),
    ),
  ).toEqual([false, false, false, true, true]);
});
