import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { bubbleRate } from './bubble-rate.ts';

/** Counts bubbles: one tap each, and the rate goes into the field. */
export function TapCounter({ onRate }: { readonly onRate: (perMin: number) => void }) {
  const [taps, setTaps] = useState<readonly number[]>([]);
  const tap = (atMs: number) => {
    const all = [...taps, atMs];
    setTaps(all);
    const rate = bubbleRate(all);
    if (rate !== null) onRate(rate);
  };
  return (
    <div className="field">
      <span className="field-name">{say('Count by tapping')}</span>
      <div className="choices">
        <Button onClick={({ timeStamp }) => tap(timeStamp)}>{say('Tap at each bubble')}</Button>
        {taps.length > 0 && <Button onClick={() => setTaps([])}>{say('Count anew')}</Button>}
      </div>
      <p className="small soft" role="status">
        {taps.length === 0
          ? say('Four bubbles at least; ten tell more.')
          : bubbleRate(taps) === null
            ? say('{count} counted, go on.', { count: taps.length })
            : say('{count} counted.', { count: taps.length })}
      </p>
    </div>
  );
}
