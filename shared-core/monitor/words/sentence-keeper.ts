import type { Alarm, AlarmState } from '../../snapshot/index.ts';
import type { StandingAlarm } from '../alarm-bank.ts';
import { alarmCatalogue, isAlarm, mostUrgentFirst } from '../call/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { lastsAfterS, settledAfterS } from '../patience.ts';
import { isBlind } from '../sense/probe-fault.ts';
import { type HeadStrength, headStrengthKind } from './head-strength.ts';
import { followLeavings, isToAndFro, type Leavings, noLeavings } from './leavings.ts';
import { followLimitAhead, type LimitAhead } from './limit-ahead.ts';
import { followOver, isOver } from './run-over.ts';

/** What the sentence at the top is about. */
export type Topic =
  | Alarm
  | 'waiting'
  | 'unjudged'
  | 'warming'
  | 'arriving'
  | 'receded'
  | 'returning'
  | 'to-and-fro'
  | 'settling'
  | 'first'
  | 'main'
  | 'leaving'
  | 'tail'
  | 'heat-off'
  | 'cooling'
  | 'over';

/** What is being said since when, and what goes with it. Immutable: a late look says the same. */
export interface Kept {
  readonly topic: Topic;
  readonly sinceS: number;
  /** How much of the strength is told: less than is known where it has only just settled. */
  readonly strength: HeadStrength['kind'];
  readonly limitAhead: LimitAhead | null;
}

/**
 * Chooses second by second what the sentence is about, so that it does not flap: a sentence stands for a while
 * unless something more urgent comes or a person acts. Time is run time, so a replay says the same as the live run.
 */
export interface SentenceKeeper {
  /** Takes one second; `isAct` where it is a person's mark that changed something. */
  second(facts: MonitorFacts, standing: readonly StandingAlarm[], isAct?: boolean): void;
  kept(): Kept;
}

/** A head that is back within this of its level is not leaving it [K]. */
const backK = 0.35;
/** After vapour has come back the bulb settles for so long [s]. */
const returningS = 20;

/** What changes with every coming and going of vapour. What asks for more than watching is not among it. */
const passing: readonly Topic[] = ['receded', 'returning', 'settling', 'first', 'main', 'tail'];

export function createSentenceKeeper(): SentenceKeeper {
  let kept: Kept = {
    topic: 'waiting',
    sinceS: 0,
    strength: 'unsettled',
    limitAhead: null,
  };
  let alarmSeenS = Number.NEGATIVE_INFINITY;
  let unknownS = 0;
  let leavings: Leavings = noLeavings;
  let overSinceS: number | null = null;

  const strengthToTell = (facts: MonitorFacts): HeadStrength['kind'] => {
    const kind = headStrengthKind(facts);
    if (kind !== 'known') unknownS = facts.timeS;
    if (kind !== 'known' || kept.strength === 'known') return kind;
    return facts.timeS - unknownS < settledAfterS ? kept.strength : 'known';
  };

  const mayChange = (to: Topic, facts: MonitorFacts, ahead: LimitAhead | null): boolean => {
    const stoodS = facts.timeS - kept.sinceS;
    if (isLasting(kept.topic)) {
      const isOver = facts.timeS - alarmSeenS >= settledAfterS && stoodS >= lastsAfterS;
      return isOver || outranks(to, kept.topic) || isPlain(to);
    }
    if (kept.topic === 'main' && to === 'leaving')
      return stoodS >= lastsAfterS || ahead?.by === 'rate';
    if (kept.topic === 'leaving' && to === 'main')
      return stoodS >= lastsAfterS || hasFallenBack(facts);
    return true;
  };

  return {
    second: (facts, standing, isAct = false) => {
      const strength = strengthToTell(facts);
      const isLeaving = isLeavingPlateau(facts, kept.topic === 'leaving');
      const limitAhead = followLimitAhead(kept.limitAhead, facts, isLeaving);
      const alarm = alarmToTell(facts, standing);
      overSinceS = followOver(overSinceS, facts);
      const plain = isOver(overSinceS, facts.timeS)
        ? 'over'
        : topicOf(facts, kept.topic, isLeaving);
      leavings = followLeavings(leavings, facts);
      const isHabit = passing.includes(plain) && isToAndFro(leavings, facts);
      const to = alarm ?? (isHabit ? 'to-and-fro' : plain);
      if (to === kept.topic) alarmSeenS = facts.timeS;
      const changes = to !== kept.topic && (isAct || mayChange(to, facts, limitAhead));
      if (changes) alarmSeenS = facts.timeS;
      kept = {
        topic: changes ? to : kept.topic,
        sinceS: changes ? facts.timeS : kept.sinceS,
        strength,
        limitAhead,
      };
    },
    kept: () => kept,
  };
}

/** The most urgent of those that stand and ask for more than watching. */
function alarmToTell(facts: MonitorFacts, standing: readonly StandingAlarm[]): Alarm | undefined {
  // As in most seconds of a run.
  if (standing.length === 0) return undefined;
  return mostUrgentFirst.find((name) =>
    standing.some(
      ({ alarm, track }) =>
        alarm === name && track.active && asksForMore(alarm, track.state, facts),
    ),
  );
}

/** Whether the sentence is this alarm's while it stands: put aside, it is not. */
function asksForMore(alarm: Alarm, state: AlarmState, facts: MonitorFacts): boolean {
  return state !== 'shelved' && (alarmCatalogue[alarm].speaks?.(facts, state) ?? true);
}

/** Alarms whose sentence outlasts a short break of their condition; a probe that reads again is believed at once. */
function isLasting(topic: Topic): boolean {
  return isAlarm(topic) && alarmCatalogue[topic].lingers;
}

function outranks(topic: Topic, other: Topic): boolean {
  const rank = alarmRank(topic);
  return rank >= 0 && rank < alarmRank(other);
}

/** What anybody at the still can see goes before any alarm that has ended. */
function isPlain(topic: Topic): boolean {
  if (isAlarm(topic)) return !isLasting(topic);
  return ['receded', 'cooling', 'over', 'heat-off', 'unjudged'].includes(topic);
}

function alarmRank(topic: Topic): number {
  const order: readonly Topic[] = mostUrgentFirst;
  return order.indexOf(topic);
}

function isLeavingPlateau({ situation, head, stage }: MonitorFacts, was: boolean): boolean {
  const { departedS, levelC } = situation;
  if (stage !== 'main-fraction' || levelC === null || head === null) return false;
  const aboveK = head.vapourC - levelC;
  // As long as the test holds it for leaving, it has to be back at its level.
  return departedS === null ? was && aboveK > backK : !was || aboveK > 0;
}

/** A head below the level it held has not left it, however long that has been said. */
function hasFallenBack({ situation, head }: MonitorFacts): boolean {
  return head !== null && situation.levelC !== null && head.vapourC < situation.levelC;
}

function topicOf(facts: MonitorFacts, was: Topic, isLeaving: boolean): Topic {
  const { head, situation, stage, heat } = facts;
  if (head === null) return 'waiting';
  if (isBlind(facts.fault)) return 'unjudged';
  if (stage === 'cool-down') return 'cooling';
  if (situation.recededSinceS !== null) return 'receded';
  if (heat === 'off') return 'heat-off';
  const mayReturn = was === 'receded' || was === 'returning' || was === 'to-and-fro';
  if (mayReturn && situation.calmS < returningS) return 'returning';
  switch (stage) {
    case 'warm-up':
      return situation.arrivedS === null ? 'warming' : 'arriving';
    case 'first-fraction':
      return situation.heldS === null ? 'settling' : 'first';
    case 'main-fraction':
      return isLeaving ? 'leaving' : 'main';
    case 'tail':
      return 'tail';
  }
}
