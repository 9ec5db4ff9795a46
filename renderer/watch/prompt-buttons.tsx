import type { Alarm, AlarmView, MarkBody } from '#shared-core';
import { Button } from '../design/index.ts';
import type { Commands } from '../window/commands.ts';

interface PromptButtonsProps {
  readonly alarm: AlarmView;
  readonly commands: Commands;
}

/** Prompts that ask for the heat to be taken off: doing so is one press away wherever they are read. */
const asksForHeatOff: ReadonlySet<Alarm> = new Set<Alarm>([
  'plateau-departure',
  'over-limit',
  'near-dryness',
  'condenser-warm',
]);

export function PromptButtons({ alarm: { alarm, state, act }, commands }: PromptButtonsProps) {
  if (state !== 'unacknowledged' && state !== 'returned-unacknowledged') return null;
  const hasHeatOff = state === 'unacknowledged' && asksForHeatOff.has(alarm);
  // Doing what was asked answers the prompt: nobody has to press twice.
  const did = async (mark: MarkBody) => {
    if (await commands.mark(mark)) await commands.acknowledge(alarm);
  };
  return (
    <div className="prompt-buttons">
      {hasHeatOff && (
        <Button
          weight="act"
          aria-label={`Heat is off: ${act}`}
          onClick={() => void did({ type: 'heat-off' })}
        >
          Heat is off
        </Button>
      )}
      {alarm === 'attention' && state === 'unacknowledged' ? (
        <Button weight="act" onClick={() => void did({ type: 'attention-answered' })}>
          I am at the still
        </Button>
      ) : (
        <Button
          weight={state === 'unacknowledged' && !hasHeatOff ? 'act' : 'plain'}
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
