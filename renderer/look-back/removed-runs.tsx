import { useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useAsked, useBench, useWindowParts } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { dateWords } from '../words/index.ts';

interface RemovedRunsProps {
  /** The runs that are in the library: one more or less, and the others may have changed too. */
  readonly after: readonly RunSummary[];
  readonly onRestored: () => void;
}

/** Runs that were taken out of the library, each with the way back; nothing where there are none. */
export function RemovedRuns({ after, onRestored }: RemovedRunsProps) {
  const { commands } = useWindowParts();
  const mayPutBack = useBench(mayCommand);
  const [removed, setRemoved] = useState<readonly RunSummary[]>([]);
  useAsked('runs/trashed', {}, (answer) => answer.ok && setRemoved(answer.value.runs), after);
  const restore = async (runId: string) => {
    if ((await commands.ask('runs/restore', { runId })) !== null) onRestored();
  };
  if (removed.length === 0) return null;
  return (
    <details className="why removed-runs">
      <summary>
        {say('Removed runs ({count, plural, one {# run} other {# runs}})', {
          count: removed.length,
        })}
      </summary>
      <ul>
        {removed.map(({ runId, name, startedAtIso }) => (
          <li key={runId}>
            <span>
              {name} <span className="soft number">· {dateWords(startedAtIso)}</span>
            </span>
            <Button
              disabled={!mayPutBack}
              onClick={() => void restore(runId)}
              aria-label={say('Put back {name}', { name })}
            >
              {say('Put back')}
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}
