import { expect, test } from 'vitest';
import { createAccess } from '../../../app/loopback/access.ts';

function countedTokens(): () => string {
  let count = 0;
  return () => `token-${++count}`;
}

test('a launch token commands once, and only the secret it was exchanged for comes back', () => {
  const access = createAccess(countedTokens());
  const launch = access.issueLaunchToken();
  const admitted = access.admit(launch);
  expect(admitted).toEqual({ mayCommand: true, secret: 'token-4' });
  access.heardFrom('token-4');
  expect(access.admit(launch)).toBeNull();
  expect(access.admit('token-4')).toEqual(admitted);
});

test('a window that was reloaded before it had its secret comes back by the launch token', () => {
  const access = createAccess(countedTokens());
  const launch = access.issueLaunchToken();
  const lost = access.admit(launch)?.secret ?? '';
  const held = access.admit(launch)?.secret ?? '';
  expect(held).not.toBe(lost);
  // The secret that nobody holds opens nothing, nor does one who guesses use the token up.
  expect(access.admit(lost)).toBeNull();
  access.heardFrom(lost);
  expect(access.admit(held)).toEqual({ mayCommand: true, secret: held });
  expect(access.admit(launch)).toBeNull();
});

test('a window that goes on speaking does not use up a launch token that was issued after it', () => {
  const access = createAccess(countedTokens());
  const secret = access.admit(access.issueLaunchToken())?.secret ?? '';
  access.heardFrom(secret);
  const next = access.issueLaunchToken();
  access.heardFrom(secret);
  expect(access.admit(next)?.mayCommand).toBe(true);
});

test('a viewer token watches any number of times and never commands', () => {
  const access = createAccess(countedTokens());
  const watching = { mayCommand: false, secret: access.viewerToken };
  expect([access.admit(access.viewerToken), access.admit(access.viewerToken)]).toEqual([
    watching,
    watching,
  ]);
});

test('a fresh launch token withdraws the last one at once and the old secret once it is used', () => {
  const access = createAccess(countedTokens());
  const first = access.issueLaunchToken();
  const secret = access.admit(first)?.secret ?? '';
  access.heardFrom(secret);
  const second = access.issueLaunchToken();
  const third = access.issueLaunchToken();
  expect(access.admit(second)).toBeNull();
  expect(access.admit(secret)).toEqual({ mayCommand: true, secret });
  expect(access.admit(third)).toEqual({ mayCommand: true, secret: 'token-7' });
  expect(access.admit(secret)).toBeNull();
});

test('nothing is admitted before a token is issued, and empty or unknown tokens never', () => {
  const access = createAccess(countedTokens());
  expect(['', 'null', 'undefined', 'token-2'].map((token) => access.admit(token))).toEqual([
    null,
    null,
    null,
    null,
  ]);
});
