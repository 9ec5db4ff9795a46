import { expect, test } from 'vitest';
import { isAppAddress } from '../../../app/electron/app-address.ts';

test('only pages of this app are its own, whatever an address begins with', () => {
  const addresses = [
    'app://window/index.html',
    'app://window/index.html?a=1#watch',
    'app://window.elsewhere.example/index.html',
    'app://window@elsewhere.example/',
    'app://someone@window/',
    'app://window:80/',
    'app://other/',
    'https://window/index.html',
    'file:///index.html',
    'javascript:alert(1)',
    'about:blank',
    'data:text/html,x',
    '',
    'app:window',
  ];
  expect(addresses.filter(isAppAddress)).toEqual([
    'app://window/index.html',
    'app://window/index.html?a=1#watch',
  ]);
});
