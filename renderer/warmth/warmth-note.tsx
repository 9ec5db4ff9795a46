import { useState } from 'react';
import { type KeptWarm, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { useKeptWarm } from './use-kept-warm.ts';
import { warmthAlarmWords } from './warmth-words.ts';

/** What is wrong with a ferment that is kept warm, in every place, until somebody has seen it or it is over. */
export function WarmthNote() {
  const kept = useKeptWarm();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [seen, setSeen] = useState<ReadonlySet<string>>(new Set());
  if (kept === null) return null;
  const waiting = kept.now.standing.filter((one) => !seen.has(nameOf(kept, one)));
  return waiting.map((one) => {
    const { title, because, act } = warmthAlarmWords(kept, one.alarm, decimal);
    return (
      <div key={one.alarm} className="problem-note" role="alert">
        <p>
          <strong>{title}</strong> {because} {act}
        </p>
        <Button onClick={() => setSeen((known) => new Set([...known, nameOf(kept, one)]))}>
          {say('Seen')}
        </Button>
      </div>
    );
  });
}

/** An alarm that comes again another day is another one. */
function nameOf(
  { fermentId }: KeptWarm,
  { alarm, sinceIso }: KeptWarm['now']['standing'][number],
): string {
  return `${fermentId} ${alarm} ${sinceIso}`;
}
