import { clockWords } from '../../run/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { probeFaultWords } from '../sense/probe-fault.ts';
import { celsius } from '../words/numbers.ts';

/** What is wrong with the probe since when, with the last reading that was believed. */
export function faultBecause({ fault, lastTrustedC, timeS }: MonitorFacts, past: string): string {
  const trusted =
    lastTrustedC === null ? 'nothing believed yet' : `last trusted value ${celsius(lastTrustedC)}`;
  return `At ${clockWords(timeS)}: ${fault === null ? past : probeFaultWords[fault]}; ${trusted}.`;
}
