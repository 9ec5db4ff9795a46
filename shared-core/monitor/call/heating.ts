import type { MonitorFacts } from '../monitor-facts.ts';

/** The pot may boil, for all that was marked and concluded. */
export function mayBoil({ heat, stage }: MonitorFacts): boolean {
  return heat !== 'off' && stage !== 'cool-down';
}

/** It does: its vapour reaches the bulb. */
export function isHeating(facts: MonitorFacts): boolean {
  return mayBoil(facts) && facts.plateau.recededSinceS === null;
}

/** Switched off alone a mantle boils on, so the act says what is to be done. */
export const heatOffAct = 'Take the heat off (flame out, mantle down)';
