import { say } from '#shared-core';
import { Button, ChoiceField } from '../design/index.ts';
import { useMarkKeys } from '../parts/index.ts';
import { clockWords } from '../words/index.ts';
import { type ReplayEvent, type ReplayState, replaySpeeds } from './replay-state.ts';

interface ReplayBarProps {
  readonly state: ReplayState;
  readonly dispatch: (event: ReplayEvent) => void;
  readonly step: (by: number) => void;
}

const speedOptions = replaySpeeds.map((speed) => ({
  value: String(speed),
  label: `${speed}×`,
}));

export function ReplayBar({ state, dispatch, step }: ReplayBarProps) {
  const { timeS, endS, isPlaying } = state;
  const toggle = () => dispatch({ type: isPlaying ? 'pause' : 'play' });
  useMarkKeys([
    { key: ' ', run: toggle },
    { key: ',', run: () => step(-1) },
    { key: '.', run: () => step(1) },
  ]);
  return (
    <section className="replay-bar" aria-label={say('Replay')}>
      <Button weight="main" className="replay-toggle" onClick={toggle}>
        {isPlaying ? say('Pause') : say('Play')}
      </Button>
      <Button aria-label={say('◂ step back')} onClick={() => step(-1)}>
        {say('◂ step')}
      </Button>
      <Button aria-label={say('step ▸ on')} onClick={() => step(1)}>
        {say('step ▸')}
      </Button>
      <label className="replay-time">
        <span className="unseen">{say('Time in the run')}</span>
        <input
          type="range"
          min={0}
          max={Math.ceil(endS)}
          step={1}
          value={Math.round(timeS)}
          aria-valuetext={clockWords(timeS)}
          onChange={({ target }) => dispatch({ type: 'jumped', timeS: Number(target.value) })}
        />
      </label>
      <span className="number replay-clock">
        {clockWords(timeS)}{' '}
        <span className="soft">{say('of {end}', { end: clockWords(endS) })}</span>
      </span>
      <ChoiceField
        name={say('Replay speed')}
        isNameHidden
        options={speedOptions}
        value={String(state.speed)}
        onValue={(value) => {
          const speed = replaySpeeds.find((known) => String(known) === value);
          if (speed !== undefined) dispatch({ type: 'speed', speed });
        }}
      />
    </section>
  );
}
