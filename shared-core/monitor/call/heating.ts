import { worded } from '../../wording/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { lastsAfterS } from '../patience.ts';

/** The pot may boil, for all that was marked and concluded. */
export function mayBoil({ heat, stage }: MonitorFacts): boolean {
  return heat !== 'off' && stage !== 'cool-down';
}

/** It does: its vapour reaches the bulb. */
export function isHeating(facts: MonitorFacts): boolean {
  return mayBoil(facts) && facts.situation.recededSinceS === null;
}

/** Less likely than this to be weak, the vapour is strong again. */
const strongAgain = 0.25;

/** What was called for goes on: the vapour is not clearly strong again, and has not been gone for so long that the heat has. */
export function isStillWeak(facts: MonitorFacts, probability: number): boolean {
  return mayBoil(facts) && probability > strongAgain && facts.situation.absentS < lastsAfterS;
}

/** Switched off alone a mantle boils on, so the act says what is to be done. */
export const heatOffAct = worded('Take the heat off (flame out, mantle down)');
