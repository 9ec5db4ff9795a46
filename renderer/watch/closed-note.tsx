import type { ReactNode } from 'react';
import { say } from '#shared-core';
import type { LinkGap } from '../stores/index.ts';
import { Say, useWords } from '../words/index.ts';

/**
 * When the program itself was closed in mid-run, or its reader of the probe had stopped: what is missing from the record must not be
 * taken for a silent still.
 */
export function ClosedNote({ gaps }: { readonly gaps: readonly LinkGap[] }) {
  const words = useWords();
  const spansOf = (why: LinkGap['reason']) =>
    gaps.flatMap(({ fromS, toS, reason }) =>
      reason === why && toS !== null
        ? [say('from {from} to {to}', { from: words.clock(fromS), to: words.clock(toS) })]
        : [],
    );
  const closed = spansOf('program-closed');
  const stopped = spansOf('reader-stopped');
  if (closed.length + stopped.length === 0) return null;
  const strong = (words: ReactNode) => <strong>{words}</strong>;
  return (
    <div className="left-out small">
      {stopped.length > 0 && (
        <p>
          <Say
            sentence={
              '<strong>The part of the program that reads the probe stopped {stopped}:</strong> what the probe sent then is not recorded.'
            }
            parts={{ stopped: stopped.join(', '), strong }}
          />
        </p>
      )}
      {closed.length > 0 && (
        <p>
          <Say
            sentence={'<strong>The program was closed {closed}:</strong> no readings.'}
            parts={{ closed: closed.join(', '), strong }}
          />
        </p>
      )}
      {gaps.some(({ isLonger }) => isLonger) && (
        <p>
          {say(
            'The computer’s clock was set meanwhile, or had lost the time: the program was closed for longer than that, nobody knows how long, and moments after it come too early. Set the clock, and write the time of day into a note.',
          )}
        </p>
      )}
    </div>
  );
}
