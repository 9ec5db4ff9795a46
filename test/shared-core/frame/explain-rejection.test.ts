import { expect, test } from 'vitest';
import { explainRejection } from '#shared-core';
import type { LineRejection } from '../../../shared-core/frame/raw-value.ts';

const long = 'x'.repeat(200);

test.each<[LineRejection, RegExp]>([
  [{ kind: 'not-understood', text: '%&$' }, /“%&\$” holds no number .*: choose another language/],
  [{ kind: 'ambiguous-comma', text: '78,42' }, /“78,42” may be one number .*: say which/],
  [{ kind: 'no-value', text: 'head' }, /no value for head: is the sensor plugged in\?/],
  [{ kind: 'too-long' }, /without an end: the speed is probably wrong\./],
  [{ kind: 'outside-range', text: '99999 ohm' }, /^99999 ohm cannot be .*: check the unit/],
  [{ kind: 'checksum', text: '$T,1*00' }, /damaged: check the cable and the speed\./],
  [{ kind: 'answer-error', text: '-113,"Undefined header"' }, /error: -113,"Undefined header"\./],
])(
  '%j is explained in a sentence that says what to try or quotes what was heard',
  (rejection, words) => {
    expect(explainRejection(rejection)).toMatch(words);
  },
);

test.each([
  'not-understood',
  'ambiguous-comma',
  'no-value',
  'outside-range',
  'answer-error',
] as const)('the sentence on %s stays short and printable, whatever arrived', (kind) => {
  const said = explainRejection({ kind, text: `\0${long}` });
  expect(said).toMatch(/·x+…/);
  expect(said.length).toBeLessThanOrEqual(180);
});
