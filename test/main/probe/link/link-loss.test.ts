import { expect, test } from 'vitest';
import { createLinkLoss } from '../../../../main/probe/link/link-loss.ts';

test('losses and returns are told in pairs, once each, and none before anything was heard', () => {
  const told: string[] = [];
  const loss = createLinkLoss(({ atS, state, reason }) => told.push(`${atS} ${state} ${reason}`));
  loss.lost('silent', 1);
  expect([loss.isLost(), told]).toEqual([false, []]);
  loss.heard(2);
  loss.lost('silent', 3);
  loss.lost('unplugged', 4);
  expect(loss.isLost()).toBe(true);
  loss.heard(5);
  loss.heard(6);
  loss.lost('unplugged', 7);
  loss.otherProbe();
  loss.heard(8);
  // The next return is one of the same probe again.
  loss.lost('silent', 9);
  loss.heard(10);
  expect(told).toEqual([
    '3 lost silent',
    '5 back silent',
    '7 lost unplugged',
    '8 back probe-changed',
    '9 lost silent',
    '10 back silent',
  ]);
});

test('a reader that stopped is told once until something is heard, also of a probe that was lost already', () => {
  const told: string[] = [];
  const loss = createLinkLoss(({ atS, state, reason }) => told.push(`${atS} ${state} ${reason}`));
  loss.readerStopped(1);
  loss.heard(2);
  loss.lost('unplugged', 3);
  loss.readerStopped(4);
  loss.readerStopped(5);
  loss.lost('silent', 6);
  loss.heard(7);
  loss.readerStopped(8);
  loss.heard(9);
  expect(told).toEqual([
    '3 lost unplugged',
    '4 lost reader-stopped',
    '7 back reader-stopped',
    '8 lost reader-stopped',
    '9 back reader-stopped',
  ]);
});
