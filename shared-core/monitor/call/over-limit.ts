import { worded } from '../../wording/index.ts';
import { lastsAfterS } from '../patience.ts';
import { ofStrength } from '../words/head-strength.ts';
import { celsius, percent } from '../words/numbers.ts';
import { limitWords, standingAt } from '../words/stage-words.ts';
import type { AlarmDefinition, CallSecond } from './alarm-definition.ts';
import { deadbandK } from './deadband.ts';
import { heatOffAct, isHeating, isStillWeak } from './heating.ts';
import { plateauDeparture } from './plateau-departure.ts';

export const overLimit = {
  id: 'over-limit',
  title: worded('Heat off now: limit passed'),
  act: worded('{heatOffAct} now.', { heatOffAct }),
  consequence: worded('What comes over is weaker than the strength you asked for.'),
  caution: 'drop-heat',
  priority: 'high',
  onDelayS: 5,
  offDelayS: 20,
  asksForHeatOff: true,
  isAnsweredByHeatOff: true,
  mayBeShelved: true,
  waitsForHead: true,
  lingers: true,
  condition: (second) => {
    const { facts, track } = second;
    const { outlook, overLimitPatienceS } = facts;
    if (track.active) return isStillWeak(facts, outlook.passedOfLate);
    const isWeak = isHeating(facts) && outlook.weakForS > overLimitPatienceS;
    return isWeak && !wasJustCalled(second);
  },
  reason: (facts) => {
    const { head, heat, outlook } = facts;
    const heatWords =
      heat === 'unknown'
        ? worded('no mark says that the heat is off')
        : worded('the heat is still on');
    return {
      because: worded(
        'The head is at {at}, above the limit of {limit}, {passed} sure: vapour {strength}, and {heat}.',
        {
          at: standingAt(head),
          limit: limitWords(facts),
          passed: percent(outlook.passed),
          strength: ofStrength(facts),
          heat: heatWords,
        },
      ),
      wouldChangeIf: worded('The head staying below {limitOnProbe}, or the heat taken off.', {
        limitOnProbe: celsius(outlook.limitOnProbeC - deadbandK(facts)),
      }),
    };
  },
  sentence: () => worded('What comes over is weaker than you asked for.'),
} as const satisfies AlarmDefinition;

/**
 * Who was called takes the heat off within the reaction time; then the heater cools, the vapour goes and the bulb
 * follows: only a head that is still above the limit after that says that the heat is on.
 */
function wasJustCalled({ facts: { timeS, settings }, trackOf }: CallSecond): boolean {
  const { active, raisedS } = trackOf(plateauDeparture.id);
  return active && raisedS !== null && timeS - raisedS < settings.reactionTimeS + lastsAfterS;
}
