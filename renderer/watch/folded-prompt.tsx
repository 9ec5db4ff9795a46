import { type AlarmView, alarmTitles, say, told } from '#shared-core';
import { useWindowParts } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import { PromptButtons } from './prompt-buttons.tsx';
import { PromptCaution } from './prompt-caution.tsx';
import { promptHeading } from './prompt-heading.ts';
import { promptStateWords } from './prompt-state.ts';

interface FoldedPromptProps {
  readonly alarm: AlarmView;
  readonly nowS: number;
  readonly canAct: boolean;
}

/** A prompt that comes after another: its name as one line, act and reason on demand. */
export function FoldedPrompt({ alarm, nowS, canAct }: FoldedPromptProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  return (
    <div
      className="prompt prompt-folded"
      data-priority={alarm.priority}
      data-state={alarm.state}
      role={alarm.priority === 'high' ? 'alert' : undefined}
    >
      <details>
        <summary className="prompt-line">
          <h2 className="prompt-act">
            {say('Also: {title}', { title: told(alarmTitles[alarm.alarm]) })}
          </h2>
        </summary>
        <p className="prompt-because">
          <strong>{words.said(promptHeading(alarm))}</strong>
        </p>
        <PromptCaution alarm={alarm.alarm} />
        <p className="prompt-state number">{promptStateWords(alarm, nowS)}</p>
        <p className="prompt-because">{words.said(alarm.because)}</p>
        <p className="prompt-because soft">{words.said(alarm.consequence)}</p>
        {canAct && <PromptButtons alarm={alarm} also={null} commands={commands} />}
      </details>
    </div>
  );
}
