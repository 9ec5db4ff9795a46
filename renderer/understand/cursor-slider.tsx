import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { clockWords } from '../words/index.ts';
import type { Understanding } from './use-understanding.ts';

/** The cursor's time as a slider, and the way back to the present. */
export function CursorSlider({ understanding }: { readonly understanding: Understanding }) {
  const { timeS, latestS, isFollowing, setTimeS, follow } = understanding;
  return (
    <div className="cursor-slider">
      <label>
        <span className="field-name">{say('Cursor')}</span>
        <input
          type="range"
          min={0}
          max={Math.max(1, Math.floor(latestS))}
          step={5}
          value={Math.floor(timeS)}
          aria-valuetext={say('{time} in the run', { time: clockWords(timeS) })}
          onChange={({ target }) => setTimeS(Number(target.value))}
        />
      </label>
      <output className="number">{clockWords(timeS)}</output>
      <Button disabled={isFollowing} onClick={follow}>
        {isFollowing ? say('Follows the run') : say('Follow the run')}
      </Button>
    </div>
  );
}
