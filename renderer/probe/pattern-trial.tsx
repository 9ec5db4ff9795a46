import { previewPattern, say, told } from '#shared-core';
import { channelWords, useWords } from '../words/index.ts';
import type { SpeechDraft } from './speech-draft.ts';

interface PatternTrialProps {
  readonly draft: SpeechDraft;
  readonly lines: readonly string[];
}

/** The pattern held against the last lines heard, while it is being written. */
export function PatternTrial({ draft, lines }: PatternTrialProps) {
  const words = useWords();
  if (draft.pattern === '') {
    return (
      <p className="small soft">
        {say('Copy a line and put {place} where its number stands.', { place: '{head}' })}
      </p>
    );
  }
  const decimalComma = draft.decimal === 'comma';
  const trial = previewPattern(draft.pattern, lines.slice(-3), { unit: draft.unit, decimalComma });
  if (trial.problem !== null) return <p className="field-problem">{told(trial.problem)}</p>;
  if (trial.lines.length === 0)
    return <p className="small soft">{say('No line heard yet to try it on.')}</p>;
  return (
    <ul className="small">
      {trial.lines.map(({ text, values, because }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the same line may be heard twice
        <li key={`${index} ${text}`}>
          <code>{text}</code> →{' '}
          {(because === null ? null : told(because)) ??
            values
              .map(
                ({ channel, value, unit }) =>
                  `${channelWords(channel)} ${words.quantity(value, 2, unit)}`,
              )
              .join(', ')}
        </li>
      ))}
    </ul>
  );
}
