import { expect, test } from 'vitest';
import { isOwnHost, isOwnOrigin } from '../../../app/loopback/own-address.ts';

test('only the loopback names with the right port are own hosts', () => {
  const hosts = [
    '127.0.0.1:4100',
    'localhost:4100',
    '127.0.0.1',
    '127.0.0.1:4101',
    'rebound.example:4100',
    '127.0.0.1.rebound.example:4100',
    'LOCALHOST:4100 ',
    undefined,
  ];
  expect(hosts.filter((host) => isOwnHost(host, 4100))).toEqual([
    '127.0.0.1:4100',
    'localhost:4100',
  ]);
});

test('only pages of this very server are own origins; an absent origin is not', () => {
  const origins = [
    'http://127.0.0.1:4100',
    'http://localhost:4100',
    'https://127.0.0.1:4100',
    'http://127.0.0.1:4101',
    'http://127.0.0.1:4100.rebound.example',
    'null',
    'file://',
    undefined,
  ];
  expect(origins.filter((origin) => isOwnOrigin(origin, 4100))).toEqual([
    'http://127.0.0.1:4100',
    'http://localhost:4100',
  ]);
});
