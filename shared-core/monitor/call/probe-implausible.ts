import { worded } from '../../wording/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { probeFaultWords } from '../sense/probe-fault.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { faultKind } from './fault-kinds.ts';
import { faultBecause } from './fault-words.ts';

export const probeImplausible = {
  id: 'probe-implausible',
  title: worded('Probe reading cannot be right'),
  act: worded(
    'Read the glass thermometer by eye; heat off and cold before you touch or open the head.',
  ),
  consequence: worded(
    'Until the head can be trusted the heat-off call waits, or may come late or not at all.',
  ),
  caution: 'hot-head',
  priority: 'high',
  onDelayS: 0,
  offDelayS: 5,
  asksForHeatOff: false,
  isAnsweredByHeatOff: false,
  mayBeShelved: true,
  waitsForHead: false,
  lingers: false,
  condition: ({ facts }) => facts.stage !== 'cool-down' && isImplausible(facts),
  occurrence: (facts) =>
    facts.fault !== null && isImplausible(facts) ? { key: facts.fault, isRepeat: false } : null,
  reason: (facts) => ({
    because: faultBecause(facts, worded('the probe is not trusted')),
    wouldChangeIf: worded('Readings that can be right coming in again.'),
  }),
  sentence: ({ fault }) =>
    fault === null
      ? worded('The head cannot be trusted.')
      : worded('The head cannot be trusted: {probeFault}.', { probeFault: probeFaultWords[fault] }),
} as const satisfies AlarmDefinition;

function isImplausible(facts: MonitorFacts): boolean {
  return faultKind(facts) === 'impossible';
}
