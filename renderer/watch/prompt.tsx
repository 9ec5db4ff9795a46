import type { AlarmView } from '#shared-core';
import { useWindowParts } from '../parts/index.ts';
import { clockWords, useWords } from '../words/index.ts';
import { PromptButtons } from './prompt-buttons.tsx';
import { PromptCaution } from './prompt-caution.tsx';
import { promptStateWords } from './prompt-state.ts';

interface PromptProps {
  readonly alarm: AlarmView;
  /** A newer one that asks for the same: it gives the reason, and what answers this one answers it. */
  readonly also: AlarmView | null;
  readonly nowS: number;
  readonly canAct: boolean;
}

/** One prompt: the act and what answers it first, then why, then what happens otherwise. Answered ones stay as a line. */
export function Prompt({ alarm, also, nowS, canAct }: PromptProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  const { state, priority, act } = alarm;
  const isOpen = state === 'unacknowledged';
  const called = also ?? alarm;
  return (
    <div
      className="prompt"
      data-priority={priority}
      data-state={state}
      role={priority === 'high' && isOpen ? 'alert' : undefined}
    >
      <h2 className="prompt-act">{words.said(act)}</h2>
      <p className="prompt-state number">{promptStateWords(called, nowS)}</p>
      {isOpen && <PromptCaution alarm={alarm.alarm} />}
      {canAct && <PromptButtons alarm={alarm} also={also} commands={commands} />}
      {isOpen && <p className="prompt-because">{words.said(called.because)}</p>}
      <details className="why">
        <summary aria-label={`${isOpen ? 'What if not?' : 'Why?'} ${act}`}>
          {isOpen ? 'What if not?' : 'Why?'}
        </summary>
        {!isOpen && (
          <p>
            At {clockWords(alarm.raisedS)} this was so: {words.said(alarm.because)}
          </p>
        )}
        <p>{words.said(called.consequence)}</p>
        <p className="soft">{words.said(called.wouldChangeIf)}</p>
        {also && (
          <p className="soft number">
            First called at {clockWords(alarm.raisedS)}: {words.said(alarm.because)}
          </p>
        )}
      </details>
    </div>
  );
}
