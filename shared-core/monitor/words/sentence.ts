import type { Alarm } from '../../snapshot/index.ts';
import { worded } from '../../wording/index.ts';
import { alarmCatalogue, isAlarm } from '../call/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { isBlind, probeFaultWords } from '../sense/probe-fault.ts';
import { unitWords } from './first-fraction-words.ts';
import { type HeadStrength, headStrength } from './head-strength.ts';
import { aheadWords } from './limit-ahead.ts';
import { celsius, span, strengthRange } from './numbers.ts';
import { coldC, overAfterS } from './run-over.ts';
import type { Kept, Topic } from './sentence-keeper.ts';
import { against } from './stage-words.ts';

/** The one sentence at the top, and the act it asks for. */
export interface Sentence {
  readonly sentence: string;
  readonly act: string | null;
}

/**
 * The sentence on what is kept in view, with the numbers of this second. `shownC` is the reading that stands beside it in
 * large figures: a room that reads both must not wonder which is right.
 */
export function composeSentence(
  facts: MonitorFacts,
  kept: Kept,
  shownC: number | null = null,
): Sentence {
  if (isAlarm(kept.topic)) {
    const { act, reason, sentence } = alarmCatalogue[kept.topic];
    return { sentence: sentence(facts), act: reason(facts).act ?? act };
  }
  const { attentionDueS } = facts;
  const isCheckDue = attentionDueS !== null && facts.timeS >= attentionDueS;
  return {
    sentence: topicSentence(kept.topic, facts, kept, shownC),
    act: isCheckDue
      ? worded('Confirm that you are at the still.')
      : topicAct(kept.topic, facts, kept),
  };
}

function topicSentence(
  topic: Exclude<Topic, Alarm>,
  facts: MonitorFacts,
  kept: Kept,
  shownC: number | null,
): string {
  const { head } = facts;
  if (head === null) {
    return shownC === null
      ? sentenceOf.waiting('', facts, kept)
      : worded('The head is at {at}; it is too early to say more.', { at: celsius(shownC) });
  }
  return sentenceOf[topic](celsius(shownC ?? head.bulbC), facts, kept);
}

/** What is said of each topic; `at` is where the head is. */
const sentenceOf: Readonly<
  Record<Exclude<Topic, Alarm>, (at: string, facts: MonitorFacts, kept: Kept) => string>
> = {
  waiting: () => worded('Waiting for the first reading of the head.'),
  unjudged: (_, { fault }) =>
    fault === null
      ? worded('The head cannot be judged just now.')
      : worded('The head cannot be judged: {probeFault}.', { probeFault: probeFaultWords[fault] }),
  warming: (at) => worded('Warming up: the head is at {at}, no vapour has reached it.', { at }),
  arriving: (at) => worded('Vapour is arriving at the head: {at}.', { at }),
  receded: (at) => worded('Vapour has left the thermometer: the head has sunk to {at}.', { at }),
  returning: (at) =>
    worded('Vapour is back at the thermometer: the head is settling at {at}.', { at }),
  'to-and-fro': (at) =>
    worded(
      'Vapour comes and goes at the thermometer, as with a flame taken away and put back: the head is at {at}.',
      { at },
    ),
  settling: (at) => worded('The first fraction begins; the head is settling at {at}.', { at }),
  first: (at) => worded('The first fraction is coming over at {at}.', { at }),
  main: (at, facts, kept) =>
    worded('The main fraction is coming over at {at}{strength}.', {
      at,
      strength: strengthClause(facts, kept),
    }),
  leaving: (at, facts, kept) =>
    worded('The plateau is ending: the head is at {at}{leaving}.', {
      at,
      leaving: leavingClause(facts, kept),
    }),
  tail: (at, facts, kept) =>
    worded('The tail is coming over at {at}{strength}.', {
      at,
      strength: strengthClause(facts, kept),
    }),
  'heat-off': (at) => worded('The heat is off; the head is at {at}.', { at }),
  cooling: () => worded('The still is cooling down.'),
  over: (at, facts, kept) =>
    isBlind(facts.fault)
      ? sentenceOf.unjudged(at, facts, kept)
      : worded('The heat is off, and the head has been below {cold} °C for over {time}.', {
          cold: coldC,
          time: span(overAfterS),
        }),
};

function strengthClause(facts: MonitorFacts, { strength: shown }: Kept): string {
  const found: HeadStrength = headStrength(facts);
  if (found.kind === 'known' && shown === 'known') {
    return `, ${strengthRange(found.strength.low, found.strength.high)}`;
  }
  return shown === 'below-azeotrope'
    ? worded(', cooler than ethanol–water vapour can be')
    : worded('; its strength has not settled yet');
}

function leavingClause({ head, situation, timeS }: MonitorFacts, { limitAhead }: Kept): string {
  const stands =
    head === null || situation.levelC === null
      ? ''
      : worded(', {against} where it held', { against: against(head.vapourC, situation.levelC) });
  return limitAhead === null
    ? stands
    : worded('{stands}; the limit comes {limitAhead}', {
        stands,
        limitAhead: aheadWords(limitAhead, timeS),
      });
}

/** The pot boils on after the heat is off, and nobody here sees when the last drop falls. */
const waterAct = worded('Keep the cooling water running until nothing drips.');

/** Asked, and no more: a still that cools is nobody's emergency, and the record is the person's to end. */
const overAct = worded(
  'Is the run over? Once nothing drips, turn the water off and stop the recording.',
);

/** What to do now, heat first; null where watching is enough. */
function topicAct(topic: Topic, facts: MonitorFacts, { strength }: Kept): string | null {
  const { heat } = facts;
  switch (topic) {
    case 'arriving':
      return worded('Ease the heat and watch the glass.');
    case 'settling':
    case 'first':
      return firstFractionAct(facts);
    case 'to-and-fro':
      return facts.stage === 'first-fraction' ? firstFractionAct(facts) : null;
    case 'main':
      return strength === 'below-azeotrope'
        ? worded('See through the glass whether the bulb sits in the vapour at the side arm.')
        : null;
    case 'leaving':
      return worded('Stay at the still and have the next receiver ready.');
    case 'receded':
      return heat === 'off' ? waterAct : worded('See whether the pot still boils.');
    case 'heat-off':
      return waterAct;
    case 'over':
      return overAct;
    case 'cooling':
      return heat === 'off' ? waterAct : worded('Make sure that the heat is off.');
    default:
      return null;
  }
}

function firstFractionAct({ firstFraction: { unit, wanted } }: MonitorFacts): string {
  return unit === 'min'
    ? worded('Collect what comes in the first {wanted} min apart.', { wanted })
    : worded('Collect the first {wanted} {unit} apart.', { wanted, unit: unitWords(unit) });
}
