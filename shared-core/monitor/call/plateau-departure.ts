import type { MonitorFacts } from '../monitor-facts.ts';
import { aheadWords, byRate } from '../words/limit-ahead.ts';
import { celsius, kelvin, moving, percent } from '../words/numbers.ts';
import { against, limitWords, standingAt } from '../words/stage-words.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { deadbandK } from './deadband.ts';
import { heatOffAct, isHeating, isStillWeak } from './heating.ts';

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
  // One dip of a flame that is taken away does not end it; who brings heat back in the tail has been called.
  condition: ({ facts, track }) => {
    const { outlook, stage } = facts;
    if (track.active) return isStillWeak(facts, outlook.passedWithinReaction);
    const wasCalled = stage === 'tail' && track.raisedS !== null;
    return isHeating(facts) && outlook.heatOffDue && !wasCalled;
  },
  reason: (facts) => {
    const { head, situation } = facts;
    const stands =
      head === null || situation.levelC === null
        ? ''
        : `, ${against(head.vapourC, situation.levelC)} the level it held, ${moving(head.rateKPerS, head.rateSdKPerS)}`;
    return {
      because: `The head is at ${atHead(facts)}${stands}. ${outlookWords(facts)}`,
      wouldChangeIf: `The head falling back below ${celsius(facts.outlook.limitOnProbeC - deadbandK(facts))}, or the heat taken off.`,
    };
  },
  sentence: (facts) => {
    if (facts.stage === 'tail') return 'The main fraction has ended.';
    return facts.stage === 'first-fraction'
      ? 'The head rises past the limit before the first fraction has ended.'
      : 'The main fraction is ending.';
  },
} as const satisfies AlarmDefinition;

const atHead = ({ head }: MonitorFacts): string => (head === null ? 'unknown' : standingAt(head));

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
  // In the words of the sentence above the plot, from one line: seconds would be more than anybody knows of the vapour.
  const when = aheadWords(byRate(facts, facts.timeS), facts.timeS);
  return `The limit of ${limit} comes ${when} by the rise of the vapour, which runs ahead of the bulb (reaction time ${settings.reactionTimeS} s).`;
}
