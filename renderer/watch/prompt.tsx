import type { AlarmView } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../window/use-stores.ts';
import { clockWords, durationWords } from '../words/index.ts';

interface PromptProps {
  readonly alarm: AlarmView;
  readonly nowS: number;
  readonly canAct: boolean;
}

/** One prompt: the act first, then why, then what happens otherwise. */
export function Prompt({ alarm, nowS, canAct }: PromptProps) {
  const { commands } = useWindowParts();
  const { state, priority, act, because, consequence, wouldChangeIf } = alarm;
  const isWaiting = state === 'unacknowledged' || state === 'returned-unacknowledged';
  const isAttention = alarm.alarm === 'attention';
  return (
    <article
      className="prompt"
      data-priority={priority}
      data-state={state}
      role={priority === 'high' && state === 'unacknowledged' ? 'alert' : undefined}
    >
      <p className="prompt-state small number">
        {stateWords(alarm, nowS)} · {clockWords(alarm.raisedS)}
      </p>
      <h3 className="prompt-act">{act}</h3>
      <p>{because}</p>
      <details className="why">
        <summary>What if not?</summary>
        <p>{consequence}</p>
        <p className="soft">{wouldChangeIf}</p>
      </details>
      {canAct && isWaiting && (
        <div className="prompt-buttons">
          {isAttention ? (
            <Button weight="act" onClick={() => void commands.mark({ type: 'attention-answered' })}>
              I am at the still
            </Button>
          ) : (
            <Button weight="act" onClick={() => void commands.acknowledge(alarm.alarm)}>
              Acknowledge
            </Button>
          )}
          {state === 'unacknowledged' && (
            <Button onClick={() => void commands.putAside(alarm.alarm)}>Put aside for 5 min</Button>
          )}
        </div>
      )}
    </article>
  );
}

function stateWords({ state, priority, shelvedUntilS }: AlarmView, nowS: number): string {
  switch (state) {
    case 'unacknowledged':
      return priority === 'high' ? 'Act now' : 'Please act';
    case 'acknowledged':
      return 'Acknowledged, still so';
    case 'returned-unacknowledged':
      return 'Over, not yet acknowledged';
    case 'shelved':
      return `Put aside, back in ${durationWords(Math.max(0, (shelvedUntilS ?? nowS) - nowS))}`;
    case 'normal':
      return 'Over';
  }
}
