import { say } from '#shared-core';
import { durationWords, useWords } from '../words/index.ts';
import type { ShownHead } from './head-now.ts';
import type { Liveness } from './liveness.ts';

interface HeadReadoutProps {
  readonly head: ShownHead | null;
  readonly liveness: Liveness;
}

/** Older than this, a reading is not shown as if it were now. */
const staleS = 5;

export function HeadReadout({ head, liveness }: HeadReadoutProps) {
  const words = useWords();
  if (head === null) {
    return (
      <div className="head-readout">
        <p className="head-name">{say('Still head')}</p>
        <p className="head-value number">–</p>
        <p className="head-note">{say('no reading yet')}</p>
      </div>
    );
  }
  const isStale = liveness === 'cut-off' || (liveness !== 'ended' && head.ageS > staleS);
  return (
    <div className="head-readout" data-stale={isStale} data-liveness={liveness}>
      <p className="head-name">{say('Still head')}</p>
      <p className="head-value number">
        {words.number(head.temperatureC, 1)}
        <span className="head-unit">°C</span>
      </p>
      <p className="head-note number">{noteWords(head, liveness, words)}</p>
    </div>
  );
}

function noteWords(
  head: ShownHead,
  liveness: Liveness,
  words: ReturnType<typeof useWords>,
): string {
  if (liveness === 'cut-off') return say('not the present value');
  if (liveness === 'ended') return say('last reading of the run');
  if (head.ageS > staleS) return say('last heard {age} ago', { age: durationWords(head.ageS) });
  const { expandedUncertaintyK } = head;
  if (expandedUncertaintyK === null) return say('as the probe sends it; nothing judges it');
  return `± ${words.number(expandedUncertaintyK, 1)} K${rateWords(head.rateKPerMin, expandedUncertaintyK, words)}`;
}

/** With more doubt than this about the head [K], as while vapour arrives, its rate says nothing. */
const mostDoubtK = 2;

function rateWords(
  rateKPerMin: number | null,
  expandedUncertaintyK: number,
  words: ReturnType<typeof useWords>,
): string {
  if (rateKPerMin === null || expandedUncertaintyK > mostDoubtK) return '';
  if (Math.abs(rateKPerMin) < 0.05) return ` · ${say('steady')}`;
  const rate = `${words.number(Math.abs(rateKPerMin), 1)} K/min`;
  return ` · ${rateKPerMin > 0 ? say('rising {rate}', { rate }) : say('falling {rate}', { rate })}`;
}
