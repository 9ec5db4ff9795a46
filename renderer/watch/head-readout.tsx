import type { HeadView } from '#shared-core';
import { durationWords } from '../words/index.ts';
import { useWords } from '../words/use-words.ts';

/** Older than this, a reading is not shown as if it were now. */
const staleS = 5;

export function HeadReadout({ head }: { readonly head: HeadView | null }) {
  const words = useWords();
  if (head === null) {
    return (
      <div className="head-readout">
        <p className="head-name">Still head</p>
        <p className="head-value number">–</p>
        <p className="head-note">no reading yet</p>
      </div>
    );
  }
  const isStale = head.ageS > staleS;
  return (
    <div className="head-readout" data-stale={isStale}>
      <p className="head-name">Still head</p>
      <p className="head-value number">
        {words.number(head.temperatureC, 1)}
        <span className="head-unit">°C</span>
      </p>
      <p className="head-note number">
        {isStale
          ? `last heard ${durationWords(head.ageS)} ago`
          : `± ${words.number(head.expandedUncertaintyK, 1)} K (k = 2)${rateWords(head, words)}`}
      </p>
    </div>
  );
}

function rateWords({ rateKPerMin }: HeadView, words: ReturnType<typeof useWords>): string {
  if (rateKPerMin === null) return '';
  if (Math.abs(rateKPerMin) < 0.05) return ' · steady';
  const direction = rateKPerMin > 0 ? 'rising' : 'falling';
  return ` · ${direction} ${words.number(Math.abs(rateKPerMin), 1)} K/min`;
}
