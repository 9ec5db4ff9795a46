import { expect, test } from 'vitest';
import { sharePortList } from '../../../../main/probe/port/shared-port-list.ts';

test('a flood of questions is answered by two looks a second, each as new as its question', async () => {
  let nowMs = 0;
  let looks = 0;
  const wait = async (ms: number) => {
    nowMs += ms;
  };
  const list = sharePortList(
    async () => {
      looks += 1;
      nowMs += 20;
      return [];
    },
    { nowMs: () => nowMs, wait },
  );
  const askedFrom = nowMs;
  for (let question = 0; question < 20; question += 1) {
    const before = looks;
    await Promise.all(Array.from({ length: 50 }, list));
    expect(looks).toBe(before + 1);
  }
  expect((nowMs - askedFrom) / 1000).toBeGreaterThan(9);
});

test('a look that fails is not kept', async () => {
  let fails = true;
  const list = sharePortList(
    async () => {
      if (fails) throw new Error('no udevadm');
      return [];
    },
    { nowMs: () => 0, wait: async () => {} },
  );
  await expect(list()).rejects.toThrow('no udevadm');
  fails = false;
  expect(await list()).toEqual([]);
});
