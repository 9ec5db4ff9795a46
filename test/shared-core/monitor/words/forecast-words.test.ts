import { expect, test } from 'vitest';
import {
  doubtWords,
  volumeWouldHelp,
} from '../../../../shared-core/monitor/words/forecast-words.ts';
import type { TwinOutlook } from '../../../../shared-core/twin/index.ts';

const estimate = { value: 1, low: 1, high: 1 };
const outlook = (volumeWouldNarrow: number): TwinOutlook => ({
  limitInS: estimate,
  limitInIfEasedS: estimate,
  distillateMlAtLimit: estimate,
  collectedMl: estimate,
  potMl: estimate,
  potMoleFraction: estimate,
  flowMlPerS: 0.05,
  bias: { mean: 0, sd: 1 },
  stopMoleFraction: null,
  volumeWouldNarrow,
});

test('a reading of the receiver is asked for where it narrows the range by a fifth, and nobody read it in the last five minutes', () => {
  expect([
    volumeWouldHelp(outlook(0.19), 1000),
    volumeWouldHelp(outlook(0.2), 299),
    volumeWouldHelp(outlook(0.2), 300),
    volumeWouldHelp(outlook(0.47), 1000),
  ]).toEqual([
    null,
    null,
    'Read the volume to narrow this by 20 %.',
    'Read the volume to narrow this by 50 %.',
  ]);
});

test('a still that does not do what the model expects is told of with how far its end has run away, and which way', () => {
  const drift = { sds: 3, checks: 4 };
  expect([
    doubtWords({ ...drift, sinceS: 1500, movedS: 640 }, true),
    doubtWords({ ...drift, sinceS: 1500, movedS: -20 }, false),
  ]).toEqual([
    'This still does not behave as the model expects: after 25 min of boiling the end lies 11 min later than was expected then; the range is wider for it. Go by the head.',
    'This still does not behave as the model expects: after 25 min of boiling the end lies 1 min earlier than was expected then; no end is told until it does. Go by the head.',
  ]);
});
