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
