import { useCallback, useEffect, useRef, useState } from 'react';
import { type MarkBody, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useMarkKeys } from '../parts/index.ts';
import { type DropTaps, dropsMark, longestPauseMs, tapped } from './drops-counter.ts';

interface DropsButtonProps {
  readonly canAct: boolean;
  readonly showKey: boolean;
  readonly onCounted: (mark: MarkBody) => void;
}

/** Tap once a drop; after a pause the rate is marked. */
export function DropsButton({ canAct, showKey, onCounted }: DropsButtonProps) {
  const [taps, setTaps] = useState<DropTaps | null>(null);
  const counted = useRef(onCounted);
  counted.current = onCounted;
  const tap = useCallback(() => setTaps((known) => tapped(known, performance.now())), []);
  useMarkKeys(canAct && showKey ? [{ key: 'd', run: tap }] : []);

  useEffect(() => {
    if (taps === null) return;
    const timer = setTimeout(() => {
      const mark = dropsMark(taps);
      if (mark) counted.current(mark);
      setTaps(null);
    }, longestPauseMs);
    return () => clearTimeout(timer);
  }, [taps]);

  const mark = taps && dropsMark(taps);
  return (
    <Button
      className="mark-button"
      disabled={!canAct}
      onClick={tap}
      data-now={taps !== null}
      aria-keyshortcuts={showKey ? 'd' : undefined}
    >
      {showKey && (
        <span className="key" aria-hidden="true">
          d
        </span>
      )}
      {mark
        ? say('{drops} drops/min', { drops: Math.round((60 * mark.count) / mark.overS) })
        : dropsWords(taps)}
    </Button>
  );
}

function dropsWords(taps: DropTaps | null): string {
  return taps === null ? say('Drops') : `${taps.count + 1} …`;
}
