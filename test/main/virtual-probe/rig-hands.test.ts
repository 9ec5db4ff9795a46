import { expect, test } from 'vitest';
import type { MarkBody } from '#shared-core';
import { createRigHands } from '../../../main/virtual-probe/rig-hands.ts';

/** A still that gives what the test says, and notes what is done to its heat. */
function rig() {
  const heats: string[] = [];
  let distilledMl = 0;
  let marks = 0;
  const hands = createRigHands({
    heat: (mark) => heats.push(mark),
    distilledMl: () => distilledMl,
    readAt: () => ({ headC: 20, potC: 20 }),
  });
  return {
    heats,
    receiverMl: hands.receiverMl,
    give(volumeMl: number) {
      distilledMl += volumeMl;
    },
    mark(mark: MarkBody): number {
      marks += 1;
      hands.follow({ markId: marks, mark });
      return marks;
    },
  };
}

test('a receiver shows what has come over since it was put there, read to half a millilitre', () => {
  const { give, mark, receiverMl } = rig();
  expect(receiverMl()).toBe(0);
  give(3.3);
  expect(receiverMl()).toBe(3.5);
  mark({ type: 'volume-read', volumeMl: 3 });
  expect(receiverMl()).toBe(3.5);
  mark({ type: 'receiver-changed', volumeMl: null });
  expect(receiverMl()).toBe(0);
  give(20.2);
  expect(receiverMl()).toBe(20);
});

test('what is done to the heat changes nothing of what the receiver shows', () => {
  const { give, mark, receiverMl } = rig();
  give(10);
  mark({ type: 'receiver-changed', volumeMl: 10 });
  give(4);
  mark({ type: 'heat-eased' });
  expect(receiverMl()).toBe(4);
});

test('a change of receivers that is undone never was', () => {
  const { give, mark, receiverMl } = rig();
  give(2);
  mark({ type: 'receiver-changed', volumeMl: 2 });
  give(10);
  const wrong = mark({ type: 'receiver-changed', volumeMl: 10 });
  give(5);
  expect(receiverMl()).toBe(5);
  mark({ type: 'mark-withdrawn', withdrawnMarkId: wrong });
  expect(receiverMl()).toBe(15);
});

test('heat that was marked off by mistake is on again once that is undone, as it was before', () => {
  const { heats, mark } = rig();
  mark({ type: 'heat-on' });
  mark({ type: 'heat-eased' });
  const off = mark({ type: 'heat-off' });
  mark({ type: 'mark-withdrawn', withdrawnMarkId: off });
  expect(heats).toEqual(['heat-on', 'heat-eased', 'heat-off', 'heat-eased']);
});

test('undoing a change of receivers does not touch the heat', () => {
  const { heats, mark } = rig();
  mark({ type: 'heat-on' });
  const changed = mark({ type: 'receiver-changed', volumeMl: 3 });
  mark({ type: 'mark-withdrawn', withdrawnMarkId: changed });
  expect(heats).toEqual(['heat-on']);
});

test('undoing what is over does not touch the heat, and undoing the first heat takes it off', () => {
  const { heats, mark } = rig();
  const on = mark({ type: 'heat-on' });
  mark({ type: 'heat-off' });
  mark({ type: 'mark-withdrawn', withdrawnMarkId: on });
  const again = mark({ type: 'heat-on' });
  mark({ type: 'mark-withdrawn', withdrawnMarkId: again });
  expect(heats).toEqual(['heat-on', 'heat-off', 'heat-on', 'heat-off']);
});
