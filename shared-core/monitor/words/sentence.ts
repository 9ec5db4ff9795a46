import { alarmCatalogue, type StandingAlarm } from '../../alarms/index.ts';
import type { Alarm } from '../../snapshot/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { probeFaultWords } from '../probe-fault.ts';
import { celsius, span } from './numbers.ts';
import { headStrengthWords } from './stage-words.ts';

/** The one sentence at the top, and the act it asks for. */
export interface Sentence {
  readonly sentence: string;
  readonly act: string | null;
}

const alarmSentences: Readonly<Record<Alarm, string>> = {
  'plateau-departure': 'The main fraction is ending.',
  'over-limit': 'What comes over is weaker than you asked for.',
  'near-dryness': 'The pot may be close to running dry.',
  'condenser-warm': 'The condenser is warm: vapour may escape.',
  surging: 'The column is surging.',
  'probe-fault': 'The head cannot be read.',
  attention: 'Nobody has confirmed being at the still.',
};

export function composeSentence(facts: MonitorFacts, standing: readonly StandingAlarm[]): Sentence {
  const urgent = standing.find(({ track }) => track.active && track.state !== 'shelved');
  if (urgent !== undefined) {
    const { act } = alarmCatalogue[urgent.alarm];
    const detail =
      urgent.alarm === 'probe-fault' && facts.fault ? `: ${probeFaultWords[facts.fault]}.` : '';
    const ended = urgent.alarm === 'plateau-departure' && facts.stage === 'tail';
    const sentence = ended ? 'The main fraction has ended.' : alarmSentences[urgent.alarm];
    return { sentence: detail ? sentence.slice(0, -1) + detail : sentence, act };
  }
  const { attentionDueS } = facts;
  const act =
    attentionDueS !== null && facts.timeS >= attentionDueS
      ? 'Confirm that you are at the still.'
      : null;
  return { sentence: stageSentence(facts), act: act ?? stageAct(facts) };
}

function stageSentence(facts: MonitorFacts): string {
  const { head, plateau } = facts;
  if (head === null) return 'Waiting for the first reading of the head.';
  if (facts.fault !== null) return 'The head cannot be judged just now.';
  const at = celsius(head.bulbC);
  if (plateau.recededSinceS !== null && facts.stage !== 'cool-down') {
    return `Vapour has left the thermometer: the head has sunk to ${at}.`;
  }
  switch (facts.stage) {
    case 'warm-up':
      return plateau.arrivedS === null
        ? `Warming up: the head is at ${at}, no vapour has reached it.`
        : `Vapour is arriving at the head: ${at}.`;
    case 'first-fraction':
      return plateau.heldS === null
        ? `The first fraction begins; the head is settling at ${at}.`
        : `The first fraction is coming over at ${at}.`;
    case 'main-fraction':
      return !isLeavingPlateau(facts)
        ? `The main fraction is coming over at ${at}, ${headStrengthWords(facts)}.`
        : `The plateau is ending: ${at} and rising${limitAhead(facts)}.`;
    case 'tail':
      return `The tail is coming over at ${at}, ${headStrengthWords(facts)}.`;
    case 'cool-down':
      return 'The still is cooling down.';
  }
}

/** A head that settles after the heat was eased rises by some tenths and stands: only one that rises further is leaving [K]. */
const leavingK = 0.75;

function isLeavingPlateau({ plateau, head }: MonitorFacts): boolean {
  const { departedS, levelC } = plateau;
  return departedS !== null && levelC !== null && head !== null && head.vapourC > levelC + leavingK;
}

/** The last minutes are read off the rate; before, a straight line would promise far too much. */
const straightLineS = 300;

function limitAhead({ outlook, forecast, timeS }: MonitorFacts): string {
  const { etaS } = outlook;
  if (etaS !== null && etaS < straightLineS) return `, the limit in about ${span(etaS)}`;
  const end = forecast?.mainFractionEndS ?? null;
  if (end === null || end.high - timeS < straightLineS) return '';
  const [low, high] = [end.low, end.high].map((endS) =>
    Math.max(1, Math.round((endS - timeS) / 60)),
  );
  return `, the limit in ${low} to ${high} min`;
}

function stageAct(facts: MonitorFacts): string | null {
  const { stage, plateau, firstFraction } = facts;
  if (stage === 'warm-up' && plateau.arrivedS !== null) return 'Ease the heat and watch the glass.';
  if (stage === 'first-fraction') {
    return `Collect the first ${firstFraction.wanted} ${firstFraction.unit} apart.`;
  }
  return null;
}
