import { execFileSync } from 'node:child_process';
import process from 'node:process';
import { expect, test } from 'vitest';
import { systemClock } from '#main';

test('the monotonic clock counts seconds, alike in every process of the computer, and never back', () => {
  const before = systemClock.monotonicS();
  const program = 'process.stdout.write(String(process.hrtime.bigint()))';
  const elsewhereS =
    Number(execFileSync(process.execPath, ['-e', program], { encoding: 'utf8' })) / 1e9;
  const after = systemClock.monotonicS();
  expect(elsewhereS).toBeGreaterThan(before);
  expect(elsewhereS).toBeLessThan(after);
});

test('the wall clock tells milliseconds since 1970', () => {
  const before = Date.now();
  const told = systemClock.wallMs();
  expect(told).toBeGreaterThanOrEqual(before);
  expect(told).toBeLessThanOrEqual(Date.now());
});
