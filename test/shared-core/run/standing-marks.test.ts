import { expect, test } from 'vitest';
import type { MarkBody } from '../../../shared-core/run/mark.ts';
import type { RunInput } from '../../../shared-core/run/run-input.ts';
import { standingMarks } from '../../../shared-core/run/standing-marks.ts';

const made = (markId: number, mark: MarkBody): RunInput => ({
  kind: 'mark',
  timeS: 10 * markId,
  markId,
  mark,
});

test('marks that were not withdrawn stand, in their order; a withdrawal is none, and readings are none', () => {
  const inputs: readonly RunInput[] = [
    { kind: 'reading', timeS: 0, channel: 'head', value: 20, unit: '°C', quality: 'good' },
    made(1, { type: 'heat-on' }),
    made(2, { type: 'volume-read', volumeMl: 12 }),
    made(3, { type: 'mark-withdrawn', withdrawnMarkId: 2 }),
    { kind: 'link', timeS: 40, state: 'lost', reason: 'silent' },
    made(4, { type: 'volume-read', volumeMl: 21 }),
  ];
  expect(standingMarks(inputs)).toEqual([inputs[1], inputs[5]]);
});
