import { useState } from 'react';
import type { RunSummary } from '#shared-core';
import { Button } from '../design/index.ts';
import { dateWords } from '../words/index.ts';
import { mostRuns } from './trace-look.ts';

interface ChooseRunsProps {
  readonly runs: readonly RunSummary[];
  readonly onCompare: (runs: readonly RunSummary[]) => void;
}

/** Picks the runs to lay over each other, in the order ticked. */
export function ChooseRuns({ runs, onCompare }: ChooseRunsProps) {
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const usable = runs.filter(({ ended }) => ended !== 'recording');
  const picked = chosen.flatMap((runId) => usable.find((run) => run.runId === runId) ?? []);
  if (usable.length < 2) return null;
  return (
    <details className="why choose-runs">
      <summary>Compare runs</summary>
      <p>Tick two to four runs: they are laid over each other from vapour arrival on.</p>
      <ul>
        {usable.map(({ runId, name, startedAtIso }) => {
          const isChosen = chosen.includes(runId);
          return (
            <li key={runId}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={isChosen}
                  disabled={!isChosen && picked.length === mostRuns}
                  onChange={() =>
                    setChosen(isChosen ? chosen.filter((id) => id !== runId) : [...chosen, runId])
                  }
                />
                <span>
                  {name} <span className="soft number">· {dateWords(startedAtIso)}</span>
                </span>
              </label>
            </li>
          );
        })}
      </ul>
      <Button weight="main" disabled={picked.length < 2} onClick={() => onCompare(picked)}>
        {picked.length < 2 ? 'Compare' : `Compare these ${picked.length}`}
      </Button>
    </details>
  );
}
