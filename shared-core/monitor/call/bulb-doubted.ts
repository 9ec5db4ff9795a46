import type { MonitorFacts } from '../monitor-facts.ts';
import { type BulbDoubt, probeFaultWords } from '../probe-fault.ts';
import { celsius } from '../words/numbers.ts';
import { standingAt } from '../words/stage-words.ts';
import type { AlarmDefinition } from './alarm-definition.ts';

/** What can be done about each, with nothing touched that is hot. */
const acts: Readonly<Record<BulbDoubt, string>> = {
  'below-boiling':
    'Check the air pressure entered and, by eye, the bulb; heat off and cold before you touch it.',
  'warm-without-vapour':
    'Look whether vapour reaches the bulb; heat off and cold before you touch it.',
};

export const bulbDoubted = {
  id: 'bulb-doubted',
  title: 'Bulb in doubt',
  act: 'Read the glass thermometer by eye; heat off and cold before you touch or open the head.',
  consequence: 'A bulb that reads too low has the heat-off call come late, or not at all.',
  caution: 'hot-head',
  priority: 'medium',
  onDelayS: 0,
  offDelayS: 5,
  asksForHeatOff: false,
  isAnsweredByHeatOff: false,
  mayBeShelved: true,
  waitsForHead: false,
  lingers: false,
  condition: ({ facts }) => facts.stage !== 'cool-down' && doubtNow(facts) !== null,
  occurrence: (facts) => {
    const doubt = doubtNow(facts);
    return doubt === null ? null : { key: doubt, isRepeat: false };
  },
  reason: (facts) => {
    const { head, scale } = facts;
    const doubt = doubtNow(facts) ?? 'below-boiling';
    return {
      because: `The head reads ${head === null ? 'unknown' : standingAt(head)}, the azeotrope at ${scale.pressureKPa.toFixed(1)} kPa boils at ${celsius(scale.azeotropeC)}: ${doubtWords(doubt)}.`,
      wouldChangeIf: 'A head at or above the azeotrope, or the right air pressure entered.',
      ...(doubt !== 'rises-away' && { act: acts[doubt] }),
    };
  },
  sentence: (facts) => {
    const doubt = doubtNow(facts);
    return doubt === null
      ? 'The head cannot be relied on.'
      : `The head cannot be relied on: ${doubtWords(doubt)}.`;
  },
  // A doubt may last for the whole run: who has answered it hears of the run again.
  speaks: (_, state) => state !== 'acknowledged',
} as const satisfies AlarmDefinition;

/** What speaks against the bulb; a rise only where nothing else does, since that explains it. */
function doubtNow({ doubt, doubtfulRise }: MonitorFacts): BulbDoubt | 'rises-away' | null {
  return doubt ?? (doubtfulRise?.endedS === null ? 'rises-away' : null);
}

function doubtWords(doubt: BulbDoubt | 'rises-away'): string {
  return doubt === 'rises-away'
    ? 'it has read too low for vapour, and rises away from that level'
    : probeFaultWords[doubt];
}
