import { worded } from '../../wording/index.ts';
import { sure } from '../certainty.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { aheadWords, byRate } from '../words/limit-ahead.ts';
import { celsius, kelvin, moving, percent } from '../words/numbers.ts';
import { against, limitWords, standingAt } from '../words/stage-words.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { deadbandK } from './deadband.ts';
import { heatOffAct, isHeating, isStillWeak } from './heating.ts';

/** The heat-off call. */
export const plateauDeparture = {
  id: 'plateau-departure',
  title: worded('Heat off, change the receiver'),
  act: worded('{heatOffAct} and change the receiver.', { heatOffAct }),
  consequence: worded('Each further minute runs weaker distillate into the main fraction.'),
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
        : worded(', {against} the level it held, {moving}', {
            against: against(head.vapourC, situation.levelC),
            moving: moving(head, situation),
          });
    return {
      because: worded('The head is at {at}{stands}. {outlook}', {
        at: standingAt(head),
        stands,
        outlook: outlookWords(facts),
      }),
      wouldChangeIf: worded('The head falling back below {limitOnProbe}, or the heat taken off.', {
        limitOnProbe: celsius(facts.outlook.limitOnProbeC - deadbandK(facts)),
      }),
    };
  },
  sentence: (facts) => {
    if (facts.stage === 'tail') return worded('The main fraction has ended.');
    return facts.stage === 'first-fraction'
      ? worded('The head rises past the limit before the first fraction has ended.')
      : worded('The main fraction is ending.');
  },
} as const satisfies AlarmDefinition;

function outlookWords(facts: MonitorFacts): string {
  const { head, outlook, settings } = facts;
  const limit = limitWords(facts);
  if (outlook.etaS === 0) {
    return outlook.passed < sure
      ? worded('The limit of {limit} is just about reached: {passed} sure that it is passed.', {
          limit,
          passed: percent(outlook.passed),
        })
      : worded('The limit of {limit} is reached, {passed} sure.', {
          limit,
          passed: percent(outlook.passed),
        });
  }
  const rises = head !== null && head.rateKPerS > 2 * head.rateSdKPerS;
  if (outlook.etaS === null || !rises) {
    const toGoK = head === null ? 0 : outlook.limitOnProbeC - head.vapourC;
    return worded(
      'The limit of {limit} is {toGo} away, within what probe and air pressure leave open.',
      { limit, toGo: kelvin(toGoK) },
    );
  }
  // In the words of the sentence above the plot, from one line: seconds would be more than anybody knows of the vapour.
  return worded(
    'The limit of {limit} comes {when} by the rise of the vapour, which runs ahead of the bulb (reaction time {reactionTime} s).',
    {
      limit,
      when: aheadWords(byRate(facts, facts.timeS), facts.timeS),
      reactionTime: settings.reactionTimeS,
    },
  );
}
