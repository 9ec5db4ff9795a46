import type { RunSummary } from '#shared-core';
import { signs } from './signs.ts';
import { useWords } from './use-words.ts';

export function hasRemarks({ corrections = [], leftOut = [] }: RunSummary): boolean {
  return corrections.length + leftOut.length > 0;
}

/** What everything that is shown of a run hangs on: what of it was put right after it, and what is missing from its record. */
export function RunRemarks({ run }: { readonly run: RunSummary }) {
  const words = useWords();
  return (
    <>
      {(run.corrections ?? []).map((sentence) => (
        <p key={sentence} className="small">
          {words.said(sentence)}
        </p>
      ))}
      {(run.leftOut ?? []).map((sentence) => (
        <p key={sentence} className="run-damage">
          {signs.problem} {words.said(sentence)}
        </p>
      ))}
    </>
  );
}
