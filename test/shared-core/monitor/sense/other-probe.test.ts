import { expect, test } from 'vitest';
import type { RunInput } from '#shared-core';
import { createOtherProbe } from '../../../../shared-core/monitor/sense/other-probe.ts';

type Link = Extract<RunInput, { kind: 'link' }>;
const back = (timeS: number, reason: Link['reason']): Link => ({
  kind: 'link',
  timeS,
  state: 'back',
  reason,
});

test('another probe is in the head from when it was changed for one that was heard, and no other return says so', () => {
  const watch = createOtherProbe();
  watch.seeLink(back(1, 'probe-changed'), false);
  watch.seeLink(back(60, 'unplugged'), true);
  expect(watch.sinceS()).toBeNull();
  watch.seeLink(back(90, 'probe-changed'), true);
  watch.seeLink(back(120, 'silent'), true);
  expect(watch.sinceS()).toBe(90);
});
