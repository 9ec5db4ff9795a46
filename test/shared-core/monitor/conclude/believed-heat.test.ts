import { expect, test } from 'vitest';
import { createBelievedHeat } from '../../../../shared-core/monitor/conclude/believed-heat.ts';
import { createMarksLedger } from '../../../../shared-core/monitor/marks-ledger.ts';
import type { HeadNow } from '../../../../shared-core/monitor/situation/head-course.ts';
import { factsOf } from '../words/facts.ts';

type Parts = Parameters<typeof factsOf>[1];

function now(parts: Parts): HeadNow {
  const { head, situation, outlook, bias } = factsOf({}, parts);
  return { head, situation, outlook, belief: bias, fault: null, lastTrustedC: 78, surging: false };
}

/** What is believed of the heat so many seconds after it was marked off at 1000 s. */
function heatAfter(seconds: number, parts: Parts = {}, markedAgainAfterS?: number) {
  const marks = createMarksLedger();
  const believed = createBelievedHeat(marks);
  const mark = (timeS: number, type: 'heat-on' | 'heat-off', markId: number) =>
    marks.add({ kind: 'mark', timeS, markId, mark: { type } });
  mark(0, 'heat-on', 1);
  for (let second = 0; second < 200; second += 1) believed.second(now({}));
  mark(1000, 'heat-off', 2);
  believed.second(now({}));
  for (let second = 1; second <= seconds; second += 1) {
    if (second === markedAgainAfterS) mark(1000 + second, 'heat-off', 3);
    believed.second(now(parts));
  }
  return believed.heat();
}

test('the heat is what was marked, and unknown before', () => {
  const marks = createMarksLedger();
  const believed = createBelievedHeat(marks);
  expect(believed.heat()).toBe('unknown');
  marks.add({ kind: 'mark', timeS: 1, markId: 1, mark: { type: 'heat-on' } });
  expect(believed.heat()).toBe('on');
});

test('vapour that does not die away within a minute and a half belies a heat-off mark', () => {
  expect([heatAfter(90), heatAfter(91)]).toEqual(['off', 'unknown']);
});

test('a bulb that cools, or that no vapour reaches, belies nothing', () => {
  expect([
    heatAfter(500, { head: { bulbRateKPerS: -0.02 } }),
    heatAfter(500, { situation: { recededSinceS: 1010 } }),
    heatAfter(500, { situation: { bathedS: null } }),
    heatAfter(500, { head: { bulbRateKPerS: -0.019 } }),
  ]).toEqual(['off', 'off', 'off', 'unknown']);
});

test('who marks it off again is believed anew', () => {
  expect([heatAfter(180, {}, 91), heatAfter(182, {}, 91)]).toEqual(['off', 'unknown']);
});
