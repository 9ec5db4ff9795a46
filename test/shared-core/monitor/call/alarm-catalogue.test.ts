import { expect, test } from 'vitest';
import { alarmCatalogue, alarmTitles, mostUrgentFirst } from '#shared-core';
import {
  alarmDefinitions,
  alarmsNamed,
} from '../../../../shared-core/monitor/call/alarm-catalogue.ts';
import { retiredAlarms } from '../../../../shared-core/monitor/call/retired-alarms.ts';
import { alarmSchema, recordedAlarmSchema } from '../../../../shared-core/snapshot/alarm.ts';

test('every alarm has one place in the order, and is known by it to the schemas', () => {
  expect(mostUrgentFirst).toEqual([
    'near-dryness',
    'condenser-warm',
    'plateau-departure',
    'over-limit',
    'probe-lost',
    'probe-implausible',
    'probes-disagree',
    'surging',
    'bulb-doubted',
    'attention',
  ]);
  expect(alarmSchema.options).toEqual(mostUrgentFirst);
  expect(new Set(mostUrgentFirst).size).toBe(mostUrgentFirst.length);
  expect(recordedAlarmSchema.options).toEqual([...mostUrgentFirst, 'probe-fault']);
});

test('what asks for the heat to be taken off comes first, and high priority before medium', () => {
  const ranks = alarmDefinitions.map(({ asksForHeatOff, priority }) =>
    asksForHeatOff ? 0 : priority === 'high' ? 1 : 2,
  );
  expect(ranks).toEqual(ranks.toSorted());
  const answered = alarmDefinitions.filter(({ isAnsweredByHeatOff }) => isAnsweredByHeatOff);
  expect(answered.every(({ asksForHeatOff }) => asksForHeatOff)).toBe(true);
});

test('what asks for the heat to be taken off says what becomes of flame and mantle', () => {
  for (const { act, caution, asksForHeatOff } of alarmDefinitions) {
    expect(caution === 'drop-heat').toBe(asksForHeatOff);
    expect(act.startsWith('Take the heat off')).toBe(asksForHeatOff);
  }
});

test('a name of an earlier version stands for what became of it, an unknown one for nothing', () => {
  expect(alarmsNamed('probe-fault')).toEqual(retiredAlarms['probe-fault'].became);
  expect(alarmsNamed('surging')).toEqual(['surging']);
  expect([alarmsNamed('toString'), alarmsNamed('later')]).toEqual([[], []]);
  expect([alarmTitles['probe-fault'], alarmTitles['probe-lost']]).toEqual([
    'Probe in doubt',
    alarmCatalogue['probe-lost'].title,
  ]);
});
