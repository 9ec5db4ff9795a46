import { expect, test } from 'vitest';
import { type MonitorChange, modelVersion, type RecordedChange } from '#shared-core';
import { agreementWith, agreementWords } from '../../../renderer/replay/agreement.ts';

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

const by = (changes: readonly RecordedChange[], ...modelVersions: readonly string[]) => ({
  changes: [...changes],
  modelVersions: [modelVersion, ...modelVersions],
});

test('the same conclusions agree, whatever snapshot stood behind an alarm', () => {
  expect(
    agreementWith(by([entered(10), alarm]), [entered(10), { ...alarm, snapshot: null }]),
  ).toEqual({
    kind: 'same',
    stages: 1,
    prompts: 1,
  });
});

test('the first difference is told by its time, a missing conclusion included', () => {
  expect([
    agreementWith(by([entered(10), entered(20)]), [entered(10), entered(21)]),
    agreementWith(by([entered(10), entered(20)]), [entered(10)]),
  ]).toEqual([
    { kind: 'different', fromS: 20, otherModel: false },
    { kind: 'different', fromS: 20, otherModel: false },
  ]);
});

test('a difference is told as that of two monitors where another version advised in the run, if only in a part of it', () => {
  const agreement = agreementWith(by([entered(10)], '2'), [entered(11)]);
  expect(agreement).toEqual({ kind: 'different', fromS: 10, otherModel: true });
  expect(agreementWords(agreement)).toMatch(/^recomputed by another version of the monitor/);
});

test('a run without recorded conclusions claims no agreement', () => {
  expect(agreementWith(by([]), [entered(10)])).toEqual({ kind: 'nothing-recorded' });
});
