import { say } from '#shared-core';
import { inMidSentence, useWords } from '../words/index.ts';

interface WhyProps {
  /** What is explained: several stand on one page. */
  readonly of: string;
  readonly because: string;
  readonly wouldChangeIf?: string;
}

/** The reason behind a call, on demand. */
export function Why({ of, because, wouldChangeIf }: WhyProps) {
  const words = useWords();
  return (
    <details className="why">
      <summary aria-label={say('Why? {of}', { of })}>{say('Why?')}</summary>
      <p>{words.said(because)}</p>
      {wouldChangeIf && (
        <p className="soft">
          {say('This would change if {condition}', {
            condition: inMidSentence(words.said(wouldChangeIf)),
          })}
        </p>
      )}
    </details>
  );
}
