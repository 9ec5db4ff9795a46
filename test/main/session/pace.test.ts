import { expect, test } from 'vitest';
import { createPace } from '../../../main/session/pace.ts';
import { createManualTime } from '../support/manual-time.ts';

function paced(gapS: number) {
  const time = createManualTime();
  const actedS: number[] = [];
  const startS = time.clock.monotonicS();
  const pace = createPace(gapS, time, () => {
    actedS.push(Number((time.clock.monotonicS() - startS).toFixed(3)));
  });
  return { pace, actedS, pass: time.pass };
}

test('the first request is acted on at once, the next ones together once the gap is over', async () => {
  const { pace, actedS, pass } = paced(0.5);
  pace.request();
  expect(actedS).toEqual([0]);
  await pass(0.25);
  pace.request();
  pace.request();
  expect(actedS).toEqual([0]);
  await pass(0.25);
  expect(actedS).toEqual([0, 0.5]);
  await pass(5);
  expect(actedS).toEqual([0, 0.5]);
});

test('a request after the gap, or right at its end, is acted on at once', async () => {
  const { pace, actedS, pass } = paced(0.5);
  pace.request();
  await pass(0.5);
  pace.request();
  await pass(3);
  pace.request();
  expect(actedS).toEqual([0, 0.5, 3.5]);
});

test('what waits can be had at once, once; where nothing waits nothing is done', async () => {
  const { pace, actedS, pass } = paced(0.5);
  pace.flush();
  pace.request();
  await pass(0.125);
  pace.flush();
  pace.request();
  await pass(0.125);
  pace.flush();
  pace.flush();
  expect(actedS).toEqual([0, 0.25]);
  // The timer that waited is put off with it, and the gap counts from the act.
  pace.request();
  await pass(0.375);
  expect(actedS).toEqual([0, 0.25]);
  await pass(0.125);
  expect(actedS).toEqual([0, 0.25, 0.75]);
  await pass(5);
  expect(actedS).toEqual([0, 0.25, 0.75]);
});
