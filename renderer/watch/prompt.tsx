import { type AlarmView, say } from '#shared-core';
import { useWindowParts } from '../parts/index.ts';
import { clockWords, useWords } from '../words/index.ts';
import { PromptButtons } from './prompt-buttons.tsx';
import { PromptCaution } from './prompt-caution.tsx';
import { promptHeading } from './prompt-heading.ts';
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
  const { state, priority } = alarm;
  const heading = words.said(promptHeading(alarm));
  const isOpen = state === 'unacknowledged';
  const called = also ?? alarm;
  const stateLine = <p className="prompt-state number">{promptStateWords(called, nowS)}</p>;
  return (
    <div
      className="prompt"
      data-priority={priority}
      data-state={state}
      role={priority === 'high' && isOpen ? 'alert' : undefined}
    >
      <h2 className="prompt-act">{heading}</h2>
      {!isOpen && stateLine}
      {isOpen && <PromptCaution alarm={alarm.alarm} />}
      {canAct && <PromptButtons alarm={alarm} also={also} commands={commands} />}
      {/* It ends where the reason begins: nothing may stand between the two. */}
      {isOpen && stateLine}
      {isOpen && <p className="prompt-because">{words.said(called.because)}</p>}
      <details className="why">
        <summary aria-label={`${isOpen ? say('What if not?') : say('Why?')} ${heading}`}>
          {isOpen ? say('What if not?') : say('Why?')}
        </summary>
        {!isOpen && (
          <p>
            {say('At {raised} this was so: {because}', {
              raised: clockWords(alarm.raisedS),
              because: words.said(alarm.because),
            })}
          </p>
        )}
        {alarm.act !== null && (
          <>
            <p>{words.said(called.consequence)}</p>
            <p className="soft">{words.said(called.wouldChangeIf)}</p>
          </>
        )}
        {also && (
          <p className="soft number">
            {say('First called at {raised}: {because}', {
              raised: clockWords(alarm.raisedS),
              because: words.said(alarm.because),
            })}
          </p>
        )}
      </details>
    </div>
  );
}
