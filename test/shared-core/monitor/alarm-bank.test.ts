import { describe, expect, test } from 'vitest';
import type { AlarmOccurrence } from '../../../shared-core/alarms/alarm-reason.ts';
import { createAlarmBank } from '../../../shared-core/monitor/alarm-bank.ts';
import { alarmDefinitions } from '../../../shared-core/monitor/call/alarm-catalogue.ts';

const because = (text: string) => () => ({ because: text, wouldChangeIf: '' });

describe('the bank of alarms', () => {
  test('puts an alarm aside only where its file allows it', () => {
    const bank = createAlarmBank();
    for (const { id } of alarmDefinitions) {
      for (const timeS of [0, 60]) bank.condition(id, timeS, true, because(id));
      bank.shelve(id, 61, 361);
    }
    const kept = bank.standing().filter(({ track }) => track.state !== 'shelved');
    expect(kept.map(({ alarm }) => alarm)).toEqual(['near-dryness', 'condenser-warm', 'attention']);
    expect(new Set(kept.map(({ track }) => track.state))).toEqual(new Set(['unacknowledged']));
  });

  test('gives a standing alarm its newest reason without calling again, and keeps it once that has passed', () => {
    const bank = createAlarmBank();
    const see = (timeS: number, reason: string, occurrence: AlarmOccurrence | null) =>
      bank.condition('probe-implausible', timeS, true, because(reason), occurrence);
    see(10, 'frozen at 10', { key: 'frozen', isRepeat: false });
    see(11, 'frozen at 11', { key: 'frozen', isRepeat: false });
    bank.acknowledge('probe-implausible', 12);
    see(13, 'spikes at 13', { key: 'spikes', isRepeat: false });
    see(14, 'nothing at 14', null);
    expect(
      bank.takeChanges().map(({ timeS, raised, record }) => [timeS, raised, record.because]),
    ).toEqual([
      [10, true, 'frozen at 10'],
      [12, false, 'frozen at 10'],
      [13, false, 'spikes at 13'],
    ]);
    expect(bank.records()).toMatchObject([{ raisedS: 10, acknowledgedS: 12 }]);
  });

  test('lets what comes back unanswered stand again with a new reason, in the record it had', () => {
    const bank = createAlarmBank();
    const see = (timeS: number, active: boolean, key: string, isRepeat: boolean) =>
      bank.condition('probe-lost', timeS, active, because(key), { key, isRepeat });
    see(10, true, 'silent 1', false);
    for (const timeS of [20, 25]) see(timeS, false, 'silent 1', false);
    see(40, true, 'silent 2', true);
    expect(bank.records()).toMatchObject([{ raisedS: 10, clearedS: null, because: 'silent 2' }]);
  });
});
