import { expect, test } from 'vitest';
import { createAlarmBank } from '../../../../shared-core/monitor/alarm-bank.ts';
import { createAlarmConditions } from '../../../../shared-core/monitor/alarm-conditions.ts';
import { isHeadUntrusted } from '../../../../shared-core/monitor/call/fault-kinds.ts';
import type { MonitorFacts } from '../../../../shared-core/monitor/monitor-facts.ts';
import { factsOf } from '../words/facts.ts';

const everythingDue = {
  condenserC: 45,

  forecast: {
    madeS: 1790,
    mainFractionEndS: null,
    mainFractionEndIfEasedS: null,
    distillateMlAtEnd: null,
    potStrengthAbv: null,
    potVolumeMl: { low: 1, value: 5, high: 10 },
    collectedMl: null,
    wouldHelp: null,
    doubt: null,
  },
} as const;

/** What is called within a minute in which all alarms that can be are due. */
function called(changes: Partial<MonitorFacts>): readonly string[] {
  const bank = createAlarmBank();
  const followAlarmConditions = createAlarmConditions(bank);
  for (let timeS = 1800; timeS < 1860; timeS += 1) {
    const facts = factsOf(
      { ...everythingDue, ...changes, timeS },
      { outlook: { heatOffDue: true, weakForS: 60 } },
    );
    followAlarmConditions(facts, true);
  }
  return bank.standing().map(({ alarm }) => alarm);
}

const byTheHead = ['plateau-departure', 'surging'];
const otherwise = ['near-dryness', 'condenser-warm'];

test('a head that sends nothing, or what cannot be, calls for nothing of its own while the heat may be on', () => {
  for (const fault of ['silent', 'frozen'] as const) {
    expect(called({ fault })).toEqual(expect.arrayContaining(otherwise));
    expect(called({ fault }).filter((alarm) => byTheHead.includes(alarm))).toEqual([]);
  }
});

test('where the heat is marked as off, what hangs on the head is followed again: it can only end', () => {
  const untrusted = (fault: MonitorFacts['fault'], heat: MonitorFacts['heat']) =>
    isHeadUntrusted(factsOf({ fault, heat }));
  expect([
    untrusted('silent', 'on'),
    untrusted('silent', 'unknown'),
    untrusted('silent', 'off'),
    untrusted('hotter-than-pot', 'on'),
    untrusted(null, 'on'),
  ]).toEqual([true, true, false, false, false]);
});

test('what another channel says against the head keeps no call to take the heat off from coming', () => {
  const trusted = called({});
  expect(trusted).toEqual(expect.arrayContaining([...byTheHead, ...otherwise]));
  expect(
    called({ fault: 'hotter-than-pot' }).filter((alarm) => alarm !== 'probes-disagree'),
  ).toEqual(trusted);
});

test('a doubted bulb keeps none from coming either', () => {
  const doubted = called({ doubt: 'below-boiling' });
  expect(doubted).toEqual(expect.arrayContaining([...byTheHead, ...otherwise, 'bulb-doubted']));
});
