import { useWords } from '../words/index.ts';

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
      <summary aria-label={`Why? ${of}`}>Why?</summary>
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
