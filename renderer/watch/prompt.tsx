import type { AlarmView } from '#shared-core';
import { useWindowParts } from '../window/use-stores.ts';
import { clockWords, durationWords } from '../words/index.ts';
import { useWords } from '../words/use-words.ts';
import { PromptButtons } from './prompt-buttons.tsx';

interface PromptProps {
  readonly alarm: AlarmView;
  readonly nowS: number;
  readonly canAct: boolean;
}

/** One prompt: the act first, then why, then what happens otherwise. Answered ones stay as a line. */
export function Prompt({ alarm, nowS, canAct }: PromptProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  const { state, priority, act, because, consequence, wouldChangeIf } = alarm;
  const isOpen = state === 'unacknowledged';
  return (
    <div
      className="prompt"
      data-priority={priority}
      data-state={state}
      role={priority === 'high' && isOpen ? 'alert' : undefined}
    >
      <h2 className="prompt-act">{words.said(act)}</h2>
      <p className="prompt-state small number">
        {stateWords(alarm, nowS)} · {clockWords(alarm.raisedS)}
      </p>
      {isOpen && <p>{words.said(because)}</p>}
      {canAct && <PromptButtons alarm={alarm} commands={commands} />}
      <details className="why">
        <summary>{isOpen ? 'What if not?' : 'Why?'}</summary>
        {!isOpen && <p>{words.said(because)}</p>}
        <p>{words.said(consequence)}</p>
        <p className="soft">{words.said(wouldChangeIf)}</p>
      </details>
    </div>
  );
}

function stateWords({ state, priority, shelvedUntilS }: AlarmView, nowS: number): string {
  switch (state) {
    case 'unacknowledged':
      return priority === 'high' ? 'Act now' : 'Please act';
    case 'acknowledged':
      return 'Acknowledged, still so';
    case 'returned-unacknowledged':
      return 'Over, not acknowledged';
    case 'shelved':
      return `Put aside, back in ${durationWords(Math.max(0, (shelvedUntilS ?? nowS) - nowS))}`;
    case 'normal':
      return 'Over';
  }
}
