import { expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, type RunInput } from '#shared-core';
import { createAdvice } from '../../../main/session/advice.ts';
import { goodReading } from '../../support/good-reading.ts';
import { createManualTime } from '../support/manual-time.ts';

const reading = (timeS: number) => goodReading(timeS, 20);
const past = (count: number) => Array.from({ length: count }, (_, index) => reading(index + 1));

/** A monitor of which each question takes a hundredth of a second. */
function advised(inputs: readonly RunInput[]) {
  const time = createManualTime();
  let aheadS = 0;
  const asked: number[] = [];
  const answered: [number, boolean][] = [];
  const advice = createAdvice({
    clock: { ...time.clock, monotonicS: () => time.clock.monotonicS() + aheadS },
    scheduler: time.scheduler,
    past: inputs,
    createMonitor: () => {
      const monitor = createMonitor(defaultRunSettings);
      return {
        ...monitor,
        push(input) {
          aheadS += 0.01;
          asked.push(input.timeS);
          return monitor.push(input);
        },
        advanceTo(timeS) {
          aheadS += 0.01;
          asked.push(timeS);
          return monitor.advanceTo(timeS);
        },
      };
    },
    onAnswer: ({ snapshot }) => answered.push([snapshot.timeS, advice.isBehind()]),
    onFailure: (message) => expect.fail(message),
  });
  return { advice, asked, answered, time };
}

test('where nothing was recorded before, all is answered at once', async () => {
  const { advice, answered } = advised([]);
  expect(advice.isBehind()).toBe(false);
  advice.push(reading(1));
  advice.advanceTo(2.25);
  expect(answered).toEqual([
    [1, false],
    [2.25, false],
  ]);
  await advice.caughtUp();
});

test('what was recorded before is gone through in slices of a fiftieth of a second, and what comes meanwhile waits its turn', async () => {
  const { advice, asked, answered, time } = advised(past(6));
  expect([advice.isBehind(), asked]).toEqual([true, []]);
  advice.push(reading(7));
  let hasCaughtUp = false;
  const caughtUp = advice.caughtUp().then(() => {
    hasCaughtUp = true;
  });
  await time.pass(0.0011);
  expect([asked, advice.isBehind(), hasCaughtUp]).toEqual([[1, 2], true, false]);
  advice.advanceTo(8.25);
  await time.pass(0.001);
  expect(asked).toEqual([1, 2, 3, 4]);
  await time.pass(0.01);
  await caughtUp;
  // Only the last answer of all is one of now.
  expect(answered).toEqual([...[1, 2, 3, 4, 5, 6, 7].map((timeS) => [timeS, true]), [8.25, false]]);
  advice.push(reading(9));
  expect([asked.at(-1), advice.isBehind()]).toEqual([9, false]);
  await advice.caughtUp();
});
