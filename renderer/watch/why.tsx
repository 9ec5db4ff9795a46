import { useWords } from '../words/use-words.ts';

interface WhyProps {
  readonly because: string;
  readonly wouldChangeIf?: string;
}

/** The reason behind a call, on demand. */
export function Why({ because, wouldChangeIf }: WhyProps) {
  const words = useWords();
  return (
    <details className="why">
      <summary>Why?</summary>
      <p>{words.said(because)}</p>
      {wouldChangeIf && (
        <p className="soft">This would change if {words.said(lowerFirst(wouldChangeIf))}</p>
      )}
    </details>
  );
}

function lowerFirst(sentence: string): string {
  return sentence.slice(0, 1).toLowerCase() + sentence.slice(1);
}
