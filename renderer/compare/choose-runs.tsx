import { useState } from 'react';
import { contractLimits, type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { PackProgress, usePack } from '../exchange/index.ts';
import { dateWords } from '../words/index.ts';
import { mostRuns } from './trace-look.ts';

interface ChooseRunsProps {
  readonly runs: readonly RunSummary[];
  readonly onCompare: (runs: readonly RunSummary[]) => void;
}

/** Picks runs to lay over each other or to export together, in the order ticked. */
export function ChooseRuns({ runs, onCompare }: ChooseRunsProps) {
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const pack = usePack();
  const usable = runs.filter((run) => run.ended !== 'recording' && run.unreadable === null);
  const picked = chosen.flatMap((runId) => usable.find((run) => run.runId === runId) ?? []);
  if (usable.length < 2) return null;
  return (
    <details className="why choose-runs">
      <summary>{say('Compare runs, or export them together')}</summary>
      <p>
        {say(
          'Tick 2 to {mostRuns} runs to lay them over each other from vapour arrival on, or up to {mostInPack} for one pack with all their files, one table of all runs and a comparison.',
          { mostRuns, mostInPack: contractLimits.runsInPack },
        )}
      </p>
      <ul>
        {usable.map(({ runId, name, startedAtIso, imported }) => {
          const isChosen = chosen.includes(runId);
          return (
            <li key={runId}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={isChosen}
                  disabled={!isChosen && picked.length === contractLimits.runsInPack}
                  onChange={() =>
                    setChosen(isChosen ? chosen.filter((id) => id !== runId) : [...chosen, runId])
                  }
                />
                <span>
                  {name}{' '}
                  <span className="soft number">
                    · {dateWords(startedAtIso)}
                    {imported === true && ` · ${say('imported')}`}
                  </span>
                </span>
              </label>
            </li>
          );
        })}
      </ul>
      <div className="choose-acts">
        <Button
          weight="main"
          disabled={picked.length < 2 || picked.length > mostRuns}
          onClick={() => onCompare(picked)}
        >
          {picked.length < 2
            ? say('Compare')
            : say('Compare these {count}', { count: picked.length })}
        </Button>
        <Button
          disabled={picked.length < 2 || pack.step !== null}
          onClick={() => void pack.make(picked.map(({ runId }) => runId))}
        >
          {picked.length < 2
            ? say('One pack')
            : say('One pack of these {count}', { count: picked.length })}
        </Button>
        <PackProgress pack={pack} />
      </div>
    </details>
  );
}
