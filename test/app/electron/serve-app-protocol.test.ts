import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { answerAppRequest as answerFrom } from '../../../app/electron/serve-app-protocol.ts';
import { createWindowFiles } from '../../../app/files/index.ts';

let base: string;
let folder: string;
let answerAppRequest: (request: { url: string; method: string }) => Promise<Response>;

beforeAll(() => {
  base = mkdtempSync(path.join(tmpdir(), 'protocol-'));
  folder = path.join(base, 'window');
  mkdirSync(folder);
  writeFileSync(path.join(folder, 'index.html'), '<p>window</p>');
  writeFileSync(path.join(base, 'secret.txt'), 'secret');
  symlinkSync(path.join(base, 'secret.txt'), path.join(folder, 'link.txt'));
  answerAppRequest = (request) => answerFrom(request, createWindowFiles(folder));
});
afterAll(() => rmSync(base, { recursive: true }));

test('a page is served with a policy that allows no connection at all', async () => {
  const response = await answerAppRequest({ url: 'app://window/index.html?x#y', method: 'GET' });
  expect({
    status: response.status,
    type: response.headers.get('content-type'),
    policy: response.headers.get('content-security-policy'),
    text: await response.text(),
  }).toEqual({
    status: 200,
    type: 'text/html; charset=utf-8',
    policy:
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    text: '<p>window</p>',
  });
});

test.each([
  ['app://window/..%2fsecret.txt', 403],
  ['app://window/%2e%2e/secret.txt', 403],
  ['app://window/../secret.txt', 403],
  ['app://window/..%5csecret.txt', 400],
  ['app://window/index.html%00', 400],
  ['app://window/link.txt', 403],
  ['app://window/nothing.js', 404],
  ['app://other/index.html', 403],
  ['https://window/index.html', 403],
])('%s is refused with %d and no content', async (url, status) => {
  const response = await answerAppRequest({ url, method: 'GET' });
  expect([response.status, await response.text()]).toEqual([status, '']);
});

test('only GET is answered', async () => {
  const response = await answerAppRequest({ url: 'app://window/index.html', method: 'POST' });
  expect(response.status).toBe(405);
});
