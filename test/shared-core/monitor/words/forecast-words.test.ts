import { expect, test } from 'vitest';
import {
  doubtWords,
  volumeWouldHelp,
} from '../../../../shared-core/monitor/words/forecast-words.ts';
import { outlookOf } from '../conclude/forecast-seconds.ts';

test('a reading of the receiver is asked for where it narrows the range by a fifth, and nobody read it in the last five minutes', () => {
  expect([
    volumeWouldHelp(outlookOf({ volumeWouldNarrow: 0.19 }), 1000),
    volumeWouldHelp(outlookOf({ volumeWouldNarrow: 0.2 }), 299),
    volumeWouldHelp(outlookOf({ volumeWouldNarrow: 0.2 }), 300),
    volumeWouldHelp(outlookOf({ volumeWouldNarrow: 0.47 }), 1000),
  ]).toEqual([
    null,
    null,
    'Read the volume to narrow this by 20 %.',
    'Read the volume to narrow this by 50 %.',
  ]);
});

test('a still that does not do what the model expects is told of with what is understood least', () => {
  const drift = { kind: 'end', sds: 3, checks: 4, sinceS: 1500 } as const;
  expect([
    doubtWords({ ...drift, movedS: 640 }, true),
    doubtWords({ ...drift, movedS: -20 }, false),
    doubtWords({ kind: 'head', usualK: 1.27 }, true),
    doubtWords({ kind: 'offset', offsetK: 0.84 }, true),
    doubtWords({ kind: 'offset', offsetK: -2 }, false),
  ]).toEqual([
    'This still does not behave as the model expects: after 25 min of boiling the end lies 11 min later than was expected then; the range is wider for it. Go by the head.',
    'This still does not behave as the model expects: after 25 min of boiling the end lies 1 min earlier than was expected then; no end is told until it does. Go by the head.',
    'This still does not behave as the model expects: from one minute to the next the head is 1.3 K off what was expected; the range is wider for it. Go by the head.',
    'This still does not behave as the model expects: its head stands 0.8 K higher than the model can explain, as over a column that still had full heat when vapour came, or by a probe that shows too much; the range is wider for it. Go by the head.',
    'This still does not behave as the model expects: its head stands 2.0 K lower than the model can explain, as by a probe that shows too little or an air pressure that is lower than stated; no end is told until it does. Go by the head.',
  ]);
});
