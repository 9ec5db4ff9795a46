import { expect, test } from 'vitest';
import type { MonitorChange, RecordedChange } from '#shared-core';
import { agreementWith } from '../../../renderer/replay/agreement.ts';

const entered = (fromS: number): RecordedChange & MonitorChange => ({
  kind: 'stage-entered',
  timeS: fromS,
  span: { stage: 'tail', fromS, toS: null, because: 'The head has left the plateau.' },
});
const alarm = {
  kind: 'alarm-changed',
  timeS: 50,
  record: {
    alarm: 'surging',
    priority: 'medium',
    raisedS: 50,
    clearedS: null,
    acknowledgedS: null,
    because: 'The head jumps.',
  },
  state: 'unacknowledged',
} as const;

test('the same conclusions agree, whatever snapshot stood behind an alarm', () => {
  expect(agreementWith([entered(10), alarm], [entered(10), { ...alarm, snapshot: null }])).toEqual({
    kind: 'same',
    stages: 1,
    prompts: 1,
  });
});

test('the first difference is told by its time, a missing conclusion included', () => {
  expect([
    agreementWith([entered(10), entered(20)], [entered(10), entered(21)]),
    agreementWith([entered(10), entered(20)], [entered(10)]),
  ]).toEqual([
    { kind: 'different', fromS: 20 },
    { kind: 'different', fromS: 20 },
  ]);
});

test('a run without recorded conclusions claims no agreement', () => {
  expect(agreementWith([], [entered(10)])).toEqual({ kind: 'nothing-recorded' });
});
