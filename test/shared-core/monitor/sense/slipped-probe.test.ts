import { expect, test } from 'vitest';
import { createSlippedProbe } from '../../../../shared-core/monitor/sense/slipped-probe.ts';

const bin = (value: number) => ({ timeS: 0, value, count: 1, spread: 0 });

test('a probe that has not slipped is left as it is', () => {
  const probe = createSlippedProbe();
  expect([probe.corrected(bin(78.4), 78.4), probe.corrected(null, 78.4)]).toEqual([
    bin(78.4),
    null,
  ]);
});

test('the steps of one that has slipped are taken off from there on', () => {
  const probe = createSlippedProbe();
  probe.slipped(6);
  probe.slipped(0.5);
  expect(probe.corrected(bin(85), 78.4)).toEqual(bin(78.5));
  expect(probe.corrected(bin(85.3), null)).toEqual(bin(78.8));
  expect(probe.corrected(null, 78.4)).toBeNull();
});

test('once readings fit better without by more than a kelvin, nothing is taken off any more', () => {
  const probe = createSlippedProbe();
  probe.slipped(6);
  // 2.4 K off without the step, 3.6 K with it.
  expect(probe.corrected(bin(80.8), 78.4)).toEqual(bin(80.8));
  expect(probe.corrected(bin(85), 78.4)).toEqual(bin(85));
});

test('better by less than that is not enough', () => {
  const probe = createSlippedProbe();
  probe.slipped(6);
  // 2.9 K off without the step, 3.1 K with it.
  expect(probe.corrected(bin(81.3), 78.4)?.value).toBeCloseTo(75.3, 9);
});
