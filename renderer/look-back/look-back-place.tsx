import { useState } from 'react';
import { Button } from '../design/index.ts';
import { goTo } from '../window/place.ts';
import { problemWords } from '../words/index.ts';
import { ImportCsv } from './import-csv.tsx';
import { OpenRun } from './open-run.tsx';
import { RunCard } from './run-card.tsx';
import { useLibrary } from './use-library.ts';

/** Look back: every run of this computer, to replay, compare and hand out. */
export function LookBackPlace() {
  const [openId, setOpenId] = useState<string | null>(null);
  if (openId !== null) {
    return <OpenRun key={openId} runId={openId} onClose={() => setOpenId(null)} />;
  }
  return <RunLibrary onOpen={setOpenId} />;
}

function RunLibrary({ onOpen }: { readonly onOpen: (runId: string) => void }) {
  const { runs, problem, reload } = useLibrary();
  return (
    <main className="place" id="place">
      <h1>Look back</h1>
      {problem && <p className="warning">{problemWords(problem)}</p>}
      {runs === null && !problem && <p role="status">Reading the library …</p>}
      {runs?.length === 0 && <NoRuns />}
      {runs && runs.length > 0 && (
        <ul className="runs" aria-label="Runs, newest first">
          {runs.map((run) => (
            <RunCard
              key={run.runId}
              run={run}
              onOpen={() => onOpen(run.runId)}
              onChanged={reload}
            />
          ))}
        </ul>
      )}
      <ImportCsv onImported={reload} />
    </main>
  );
}

function NoRuns() {
  return (
    <div className="place-lead">
      <p>No run yet. Every run you record appears here, ready to replay and to hand out.</p>
      <Button weight="main" onClick={() => goTo('prepare')}>
        Prepare one, or rehearse
      </Button>
    </div>
  );
}
