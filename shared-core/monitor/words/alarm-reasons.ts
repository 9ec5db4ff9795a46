import type { AlarmReason } from '../../alarms/index.ts';
import type { Alarm } from '../../snapshot/index.ts';
import type { DoubtfulRise } from '../doubtful-rise-watch.ts';
import { quietAgainS } from '../dropout-watch.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import {
  bulbDoubtActs,
  doubtfulRiseAct,
  dropoutsAct,
  isDropout,
  probeFaultWords,
} from '../probe-fault.ts';
import { ofStrength } from './head-strength.ts';
import { celsius, kelvin, moving, percent, span } from './numbers.ts';
import { against, limitWords, standingAt } from './stage-words.ts';

/** The numbers behind an alarm at the moment it is raised, and what would take it back. */
export function alarmReason(alarm: Alarm, facts: MonitorFacts): AlarmReason {
  const { head, outlook, plateau, settings } = facts;
  const at = head === null ? 'unknown' : standingAt(head);
  const limit = limitWords(facts);
  switch (alarm) {
    case 'plateau-departure': {
      const rise = doubtfulRiseNow(facts);
      if (rise !== null) {
        const { azeotropeC, pressureKPa } = facts.scale;
        return {
          because: `The head cannot be relied on: it has read as low as ${celsius(rise.lowestC)}, and the azeotrope at ${pressureKPa.toFixed(1)} kPa boils at ${celsius(azeotropeC)}. Since then it has risen to ${at}, beyond all it read before (${celsius(rise.highestC)} at most). From the azeotrope to the limit of ${facts.limitAbv} % vol vapour rises by ${kelvin(rise.toLimitK)}: the limit may be reached.`,
          wouldChangeIf: `The head falling back below ${celsius(rise.highestC)}, or the heat taken off.`,
          act: doubtfulRiseAct,
        };
      }
      if (facts.limitPassedUnheldForS > 0) {
        return {
          because: `The head is at ${at} and has been above the limit of ${limit} for ${span(facts.limitPassedUnheldForS)}. Before, it rose through stronger vapour without holding a plateau.`,
          wouldChangeIf: `The head falling back below ${celsius(outlook.limitOnProbeC - deadbandK(facts))}, or the heat taken off.`,
        };
      }
      const stands =
        head === null || plateau.levelC === null
          ? ''
          : `, ${against(head.vapourC, plateau.levelC)} the plateau it held, ${moving(head.rateKPerS, head.rateSdKPerS)}`;
      return {
        because: `The head is at ${at}${stands}. ${limitOutlookWords(facts)}`,
        wouldChangeIf: `The head falling back below ${celsius(Math.min(outlook.limitOnProbeC - deadbandK(facts), (plateau.levelC ?? outlook.limitOnProbeC) + deadbandK(facts)))}, or the heat taken off.`,
      };
    }
    case 'over-limit':
      return {
        because: `The head is at ${at}, above the limit of ${limit}, ${percent(outlook.passed)} sure: vapour ${ofStrength(facts)}, and ${facts.heat === 'unknown' ? 'no mark says that the heat is off' : 'the heat is still on'}.`,
        wouldChangeIf: `The head staying below ${celsius(outlook.limitOnProbeC - deadbandK(facts))}, or the heat taken off.`,
      };
    case 'near-dryness':
      return {
        because: `Of the ${settings.charge.volumeMl} mL charge ${facts.forecast?.potVolumeMl ? `${facts.forecast.potVolumeMl.low.toFixed(0)}–${facts.forecast.potVolumeMl.high.toFixed(0)}` : 'a few'} mL are left in the pot by what was booked and estimated: that may be less than the tenth that must stay.`,
        wouldChangeIf: 'A volume booked that shows more liquid left in the pot.',
      };
    case 'condenser-warm':
      return {
        because: `The condenser outlet is at ${facts.condenserC === null ? 'an unknown temperature' : celsius(facts.condenserC)}.`,
        wouldChangeIf: 'The outlet cooling below 35 °C.',
      };
    case 'surging':
      return {
        because: `The head swings up and down by far more than its noise of ${kelvin(facts.noise.slowSdK)} around ${at}.`,
        wouldChangeIf: 'A minute of steady readings.',
      };
    case 'probe-fault': {
      const { fault, doubt } = facts;
      if (fault === null && doubt !== null) {
        return {
          because: `The head reads ${at}, the azeotrope at ${facts.scale.pressureKPa.toFixed(1)} kPa boils at ${celsius(facts.scale.azeotropeC)}: ${probeFaultWords[doubt]}.`,
          wouldChangeIf: 'A head at or above the azeotrope, or the right air pressure entered.',
          act: bulbDoubtActs[doubt],
        };
      }
      const trusted =
        facts.lastTrustedC === null
          ? 'nothing believed yet'
          : `last trusted value ${celsius(facts.lastTrustedC)}`;
      const because = `At ${span(facts.timeS)}: ${fault === null ? 'the probe is not trusted' : probeFaultWords[fault]}; ${trusted}.`;
      const { dropouts } = facts;
      if (dropouts.count < 2 || !isDropout(fault)) {
        return { because, wouldChangeIf: 'Good readings coming in again.' };
      }
      return {
        because: `${because} The probe has dropped out ${dropouts.count} times in ${span(facts.timeS - dropouts.sinceS)}.`,
        wouldChangeIf: `${span(quietAgainS)} without a dropout; once you have answered, good readings.`,
        act: dropoutsAct,
      };
    }
    case 'attention':
      return {
        because: `The check was due ${span(facts.timeS - (facts.attentionDueS ?? facts.timeS))} ago and nobody answered.`,
        wouldChangeIf: 'Any mark made by a person.',
      };
  }
}

/** The call stands for so long after the head has fallen back; so do its words [s]. */
const stillSaidS = 60;

/** The rise of a doubted head, while it is what the call is about: not once the limit is known to be passed. */
export function doubtfulRiseNow({ doubtfulRise, stage, timeS }: MonitorFacts): DoubtfulRise | null {
  if (doubtfulRise === null || stage === 'tail') return null;
  const { endedS } = doubtfulRise;
  return endedS === null || timeS - endedS < stillSaidS ? doubtfulRise : null;
}

/** Below this a limit is not said to be reached. */
const nearlySure = 0.9;

function limitOutlookWords(facts: MonitorFacts): string {
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

/** Deadband on temperature alarms: the larger of 0.3 K and three standard deviations of the noise. */
export function deadbandK({ noise }: MonitorFacts): number {
  return Math.max(0.3, 3 * Math.hypot(noise.whiteSdK, noise.slowSdK));
}
