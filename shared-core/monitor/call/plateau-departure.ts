import type { AlarmReason } from '../../alarms/alarm-reason.ts';
import type { DoubtfulRise } from '../doubtful-rise-watch.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { celsius, kelvin, moving, percent, span } from '../words/numbers.ts';
import { against, limitWords, standingAt } from '../words/stage-words.ts';
import type { AlarmDefinition, CallSecond } from './alarm-definition.ts';
import { deadbandK } from './deadband.ts';
import { doubtfulRiseNow } from './doubtful-rise.ts';
import { heatOffAct, isHeating, mayBoil } from './heating.ts';

/** A head that never held gives no level to have left; the limit itself must have been passed for so long [s]. */
const unheldPatienceS = 30;
/** Below this a limit is not said to be reached. */
const nearlySure = 0.9;

/** The heat-off call. */
export const plateauDeparture = {
  id: 'plateau-departure',
  title: 'Heat off, change the receiver',
  act: `${heatOffAct} and change the receiver.`,
  consequence: 'Each further minute runs weaker distillate into the main fraction.',
  caution: 'drop-heat',
  priority: 'high',
  onDelayS: 4,
  offDelayS: 20,
  asksForHeatOff: true,
  isAnsweredByHeatOff: true,
  mayBeShelved: true,
  waitsForHead: true,
  lingers: true,
  condition: (second) => {
    const { facts, track } = second;
    // A doubted bulb that swings may seem to have lost its vapour: while it rises, it has not.
    if (facts.doubtfulRise?.endedS === null && mayBoil(facts)) return true;
    if (!isHeating(facts)) return false;
    if (!track.active) return hasLeft(second);
    return facts.head === null || facts.head.vapourC > backBelowC(facts);
  },
  reason: (facts) => {
    const rise = doubtfulRiseNow(facts);
    if (rise !== null) return riseReason(facts, rise);
    return facts.limitPassedUnheldForS > 0 ? unheldReason(facts) : departedReason(facts);
  },
  sentence: (facts) => {
    if (doubtfulRiseNow(facts) !== null) {
      return 'The head rises away from its level; it cannot be relied on for strength.';
    }
    if (facts.stage === 'tail') return 'The main fraction has ended.';
    return facts.stage === 'first-fraction'
      ? 'The head rises past the limit before the first fraction has ended.'
      : 'The main fraction is ending.';
  },
} as const satisfies AlarmDefinition;

function hasLeft({ facts, track }: CallSecond): boolean {
  // Who brings heat back in the tail has been called; that the vapour is weak is told of by over-limit.
  const wasCalled = facts.stage === 'tail' && track.raisedS !== null;
  const leftUnheld = facts.limitPassedUnheldForS > unheldPatienceS && !wasCalled;
  return leftUnheld || (facts.heatOffArmed && facts.outlook.heatOffDue);
}

/** Under the limit and near the plateau, on the probe's own scale. */
function backBelowC(facts: MonitorFacts): number {
  const { outlook, plateau } = facts;
  const bandK = deadbandK(facts);
  return Math.min(outlook.limitOnProbeC - bandK, (plateau.levelC ?? outlook.limitOnProbeC) + bandK);
}

const atHead = ({ head }: MonitorFacts): string => (head === null ? 'unknown' : standingAt(head));

function riseReason(facts: MonitorFacts, rise: DoubtfulRise): AlarmReason {
  const { azeotropeC, pressureKPa } = facts.scale;
  return {
    because: `The head cannot be relied on: it has read as low as ${celsius(rise.lowestC)}, and the azeotrope at ${pressureKPa.toFixed(1)} kPa boils at ${celsius(azeotropeC)}. Since then it has risen to ${atHead(facts)}, beyond all it read before (${celsius(rise.highestC)} at most). From the azeotrope to the limit of ${facts.limitAbv} % vol vapour rises by ${kelvin(rise.toLimitK)}: the limit may be reached.`,
    wouldChangeIf: `The head falling back below ${celsius(rise.highestC)}, or the heat taken off.`,
    act: 'Check the distillate; take the heat off if it is weak.',
  };
}

function unheldReason(facts: MonitorFacts): AlarmReason {
  return {
    because: `The head is at ${atHead(facts)} and has been above the limit of ${limitWords(facts)} for ${span(facts.limitPassedUnheldForS)}. Before, it rose through stronger vapour without holding a plateau.`,
    wouldChangeIf: `The head falling back below ${celsius(facts.outlook.limitOnProbeC - deadbandK(facts))}, or the heat taken off.`,
  };
}

function departedReason(facts: MonitorFacts): AlarmReason {
  const { head, plateau } = facts;
  const stands =
    head === null || plateau.levelC === null
      ? ''
      : `, ${against(head.vapourC, plateau.levelC)} the plateau it held, ${moving(head.rateKPerS, head.rateSdKPerS)}`;
  return {
    because: `The head is at ${atHead(facts)}${stands}. ${outlookWords(facts)}`,
    wouldChangeIf: `The head falling back below ${celsius(backBelowC(facts))}, or the heat taken off.`,
  };
}

function outlookWords(facts: MonitorFacts): string {
  const { head, outlook, settings } = facts;
  const limit = limitWords(facts);
  if (outlook.etaS === 0) {
    return outlook.passed < nearlySure
      ? `The limit of ${limit} is just about reached: ${percent(outlook.passed)} sure that it is passed.`
      : `The limit of ${limit} is reached, ${percent(outlook.passed)} sure.`;
  }
  const rises = head !== null && head.rateKPerS > 2 * head.rateSdKPerS;
  if (outlook.etaS === null || !rises) {
    const toGoK = head === null ? 0 : outlook.limitOnProbeC - head.vapourC;
    return `The limit of ${limit} is ${kelvin(toGoK)} away, within what probe and air pressure leave open.`;
  }
  return `The limit of ${limit} is about ${span(outlook.etaS)} away (reaction time ${settings.reactionTimeS} s).`;
}
