import { say } from '#shared-core';
import type { LinkGap } from '../stores/index.ts';
import { Say, useWords } from '../words/index.ts';

/** When the program itself was closed in mid-run: what is missing from the record must not be taken for a silent still. */
export function ClosedNote({ gaps }: { readonly gaps: readonly LinkGap[] }) {
  const words = useWords();
  const closed = gaps.flatMap(({ fromS, toS, reason, isLonger }) =>
    reason === 'program-closed' && toS !== null ? [{ fromS, toS, isLonger }] : [],
  );
  if (closed.length === 0) return null;
  const spans = closed.map(({ fromS, toS }) =>
    say('from {from} to {to}', { from: words.clock(fromS), to: words.clock(toS) }),
  );
  return (
    <div className="left-out small">
      <p>
        <Say
          sentence={'<strong>The program was closed {closed}:</strong> no readings.'}
          parts={{ closed: spans.join(', '), strong: (words) => <strong>{words}</strong> }}
        />
      </p>
      {closed.some(({ isLonger }) => isLonger) && (
        <p>
          {say(
            'The computer’s clock was set meanwhile, or had lost the time: the program was closed for longer than that, nobody knows how long, and moments after it come too early. Set the clock, and write the time of day into a note.',
          )}
        </p>
      )}
    </div>
  );
}
