import { expect, test } from 'vitest';
import { systemClock, systemScheduler } from '#main';

/** Waits until an act has been done so often; answers how long that took [s]. */
function counted(times: number, begin: (act: () => void) => () => void) {
  const startS = systemClock.monotonicS();
  let done = 0;
  let stop = () => {};
  const enough = new Promise<number>((resolve) => {
    stop = begin(() => {
      done += 1;
      if (done === times) resolve(systemClock.monotonicS() - startS);
    });
  });
  return { enough, stop: () => stop(), done: () => done };
}

test('what is due once is done once, not before its seconds have gone, and not when it was called off', async () => {
  const off = counted(1, (act) => systemScheduler.after(0.02, act));
  off.stop();
  const once = counted(1, (act) => systemScheduler.after(0.05, act));
  // Timers of the system count whole milliseconds.
  expect(await once.enough).toBeGreaterThan(0.048);
  await counted(1, (act) => systemScheduler.after(0.1, act)).enough;
  expect([off.done(), once.done()]).toEqual([0, 1]);
});

test('what is due again and again is done until it is called off', async () => {
  const again = counted(3, (act) => systemScheduler.every(0.03, act));
  expect(await again.enough).toBeGreaterThan(0.085);
  again.stop();
  const done = again.done();
  await counted(1, (act) => systemScheduler.after(0.1, act)).enough;
  expect(again.done()).toBe(done);
});
