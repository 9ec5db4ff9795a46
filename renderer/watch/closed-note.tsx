import { say } from '#shared-core';
import type { LinkGap } from '../stores/index.ts';
import { Say, useWords } from '../words/index.ts';

/** When the program itself was closed in mid-run: what is missing from the record must not be taken for a silent still. */
export function ClosedNote({ gaps }: { readonly gaps: readonly LinkGap[] }) {
  const words = useWords();
  const closed = gaps.flatMap(({ fromS, toS, reason }) =>
    reason === 'program-closed' && toS !== null
      ? [say('from {from} to {to}', { from: words.clock(fromS), to: words.clock(toS) })]
      : [],
  );
  if (closed.length === 0) return null;
  return (
    <p className="left-out small">
      <Say
        sentence={'<strong>The program was closed {closed}:</strong> no readings.'}
        parts={{ closed: closed.join(', '), strong: (words) => <strong>{words}</strong> }}
      />
    </p>
  );
}
