import { clockWords, worded } from '../../wording/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { probeFaultWords } from '../sense/probe-fault.ts';
import { celsius } from '../words/numbers.ts';

/** What is wrong with the probe since when, with the last reading that was believed. */
export function faultBecause({ fault, lastTrustedC, timeS }: MonitorFacts, past: string): string {
  const trusted =
    lastTrustedC === null
      ? worded('nothing believed yet')
      : worded('last trusted value {lastTrusted}', { lastTrusted: celsius(lastTrustedC) });
  return worded('At {time}: {fault}; {trusted}.', {
    time: clockWords(timeS),
    fault: fault === null ? past : probeFaultWords[fault],
    trusted,
  });
}
