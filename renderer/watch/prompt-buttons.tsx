import type { AlarmView } from '#shared-core';
import { Button } from '../design/index.ts';
import type { Commands } from '../window/commands.ts';

interface PromptButtonsProps {
  readonly alarm: AlarmView;
  readonly commands: Commands;
}

export function PromptButtons({ alarm: { alarm, state, act }, commands }: PromptButtonsProps) {
  if (state !== 'unacknowledged' && state !== 'returned-unacknowledged') return null;
  return (
    <div className="prompt-buttons">
      {alarm === 'attention' && state === 'unacknowledged' ? (
        <Button weight="act" onClick={() => void commands.mark({ type: 'attention-answered' })}>
          I am at the still
        </Button>
      ) : (
        <Button
          weight={state === 'unacknowledged' ? 'act' : 'plain'}
          aria-label={`Acknowledge: ${act}`}
          onClick={() => void commands.acknowledge(alarm)}
        >
          Acknowledge
        </Button>
      )}
      {state === 'unacknowledged' && (
        <Button aria-label={`Not for 5 min: ${act}`} onClick={() => void commands.putAside(alarm)}>
          Not for 5 min
        </Button>
      )}
    </div>
  );
}
