import { expect, test } from 'vitest';
import { chooseShell, type ShellFacts } from '../../../scripts/starting/choose-shell.ts';

const good: ShellFacts = {
  wantsBrowser: false,
  opensWindow: true,
  nodeVersion: '22.12.0',
  platform: 'linux',
  hasDisplay: true,
  isRoot: false,
};

test('the desktop shell is preferred wherever it can run', () => {
  expect([
    chooseShell(good),
    chooseShell({ ...good, nodeVersion: '24.0.0' }),
    chooseShell({ ...good, platform: 'win32', hasDisplay: false }),
    chooseShell({ ...good, platform: 'darwin', hasDisplay: false, isRoot: true }),
  ]).toEqual(Array(4).fill({ shell: 'electron' }));
});

test('the browser is used without a word when it was asked for', () => {
  const quiet = { shell: 'loopback', because: null };
  expect([
    chooseShell({ ...good, wantsBrowser: true }),
    chooseShell({ ...good, opensWindow: false, nodeVersion: '20.19.0' }),
  ]).toEqual([quiet, quiet]);
});

test.each([
  [{ nodeVersion: '20.20.2' }, 'needs Node.js 22.12 or newer and this is 20.20.2'],
  [{ nodeVersion: '22.11.9' }, 'needs Node.js 22.12 or newer and this is 22.11.9'],
  [{ hasDisplay: false }, 'no screen'],
  [{ isRoot: true }, 'as root'],
])('the browser is used with one sentence when %j', (change, words) => {
  const choice = chooseShell({ ...good, ...change });
  expect(choice).toEqual({ shell: 'loopback', because: expect.stringContaining(words) });
  expect(choice.shell === 'loopback' && choice.because?.match(/\.(\s|$)/g)).toHaveLength(1);
});
