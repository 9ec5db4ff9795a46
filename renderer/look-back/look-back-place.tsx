import { useCallback, useState } from 'react';
import { type KeptFerment, type RunSummary, say } from '#shared-core';
import { ChooseRuns, CompareRuns } from '../compare/index.ts';
import { Button } from '../design/index.ts';
import { FermentCards, WeekReplay } from '../ferment/index.ts';
import { goTo, useBench } from '../parts/index.ts';
import { isViewer } from '../stores/index.ts';
import { ChooseFile, type FileBeginning, lookInto, TakeIn } from '../take-in/index.ts';
import { FermentScreen } from '../watch/index.ts';
import { problemWords } from '../words/index.ts';
import { FindRuns } from './find-runs.tsx';
import { everything, matchingRuns } from './matching-runs.ts';
import { type OpenFor, OpenRun } from './open-run.tsx';
import { RemovedRuns } from './removed-runs.tsx';
import { RunCard } from './run-card.tsx';
import { useLibrary } from './use-library.ts';

/** Look back: every run of this computer, to replay, compare and hand out. */
export function LookBackPlace() {
  const [open, setOpen] = useState<{ runId: string; openFor: OpenFor } | null>(null);
  const [taking, setTaking] = useState<{ file: File; beginning: FileBeginning } | null>(null);
  /** Where the eye and the focus go back to. */
  const [cameFrom, setCameFrom] = useState<string | null>(null);
  const [week, setWeek] = useState<{ ferment: KeptFerment; as: 'replay' | 'classroom' } | null>(
    null,
  );
  const closeWeek = useCallback(() => setWeek(null), []);
  const [compared, setCompared] = useState<readonly RunSummary[] | null>(null);
  if (open !== null) {
    const close = () => {
      setCameFrom(open.runId);
      setOpen(null);
    };
    return <OpenRun key={open.runId} {...open} onClose={close} />;
  }
  if (taking !== null) {
    return (
      <TakeIn
        {...taking}
        onOpen={(runId) => {
          setTaking(null);
          setOpen({ runId, openFor: 'replay' });
        }}
        onClose={() => setTaking(null)}
      />
    );
  }
  if (week?.as === 'replay') return <WeekReplay ferment={week.ferment} onClose={closeWeek} />;
  if (week !== null) {
    return <FermentScreen fermentId={week.ferment.fermentId} onClose={closeWeek} />;
  }
  if (compared !== null) return <CompareRuns runs={compared} onClose={() => setCompared(null)} />;
  return (
    <RunLibrary
      cameFrom={cameFrom}
      onOpen={(runId, openFor) => setOpen({ runId, openFor })}
      onCompare={setCompared}
      onWeek={(ferment, as) => setWeek({ ferment, as })}
      onFile={(file) => void lookInto(file).then((beginning) => setTaking({ file, beginning }))}
    />
  );
}

/** Fewer runs are seen at a glance. */
const leastToFind = 6;

interface RunLibraryProps {
  readonly cameFrom: string | null;
  readonly onOpen: (runId: string, openFor: OpenFor) => void;
  readonly onCompare: (runs: readonly RunSummary[]) => void;
  readonly onFile: (file: File) => void;
  readonly onWeek: (ferment: KeptFerment, as: 'replay' | 'classroom') => void;
}

function RunLibrary({ cameFrom, onOpen, onCompare, onFile, onWeek }: RunLibraryProps) {
  const { runs, problem, reload } = useLibrary();
  const onlyWatches = useBench(isViewer);
  const [lookFor, setLookFor] = useState(everything);
  const found = runs === null ? [] : matchingRuns(runs, lookFor);
  return (
    <main className="place" id="place">
      <h1>{say('Look back')}</h1>
      {problem && <p className="warning">{problemWords(problem)}</p>}
      {runs === null && !problem && <p role="status">{say('Reading the library …')}</p>}
      {runs?.length === 0 && <NoRuns />}
      {runs && (
        <div className="library-tools">
          <ChooseRuns runs={runs} onCompare={onCompare} />
          {!onlyWatches && <ChooseFile isFirst={runs.length === 0} onFile={onFile} />}
        </div>
      )}
      {runs && runs.length >= leastToFind && (
        <FindRuns lookFor={lookFor} found={found.length} all={runs.length} onLookFor={setLookFor} />
      )}
      {runs && runs.length > 0 && found.length === 0 && (
        <div className="place-lead">
          <p>{say('No run has all of this. Part of a name, a month or a day is enough.')}</p>
          <Button onClick={() => setLookFor(everything)}>{say('Show all runs')}</Button>
        </div>
      )}
      {runs && runs.length > 0 && (
        <ul className="runs" aria-label={say('Runs, newest first')}>
          {found.map((run) => (
            <RunCard
              key={run.runId}
              run={run}
              isReturnedTo={run.runId === cameFrom}
              onOpen={(openFor) => onOpen(run.runId, openFor)}
              onChanged={reload}
            />
          ))}
        </ul>
      )}
      <FermentCards
        onReplay={(ferment) => onWeek(ferment, 'replay')}
        onClassroom={(ferment) => onWeek(ferment, 'classroom')}
      />
      {!onlyWatches && runs && <RemovedRuns after={runs} onRestored={reload} />}
    </main>
  );
}

function NoRuns() {
  const onlyWatches = useBench(isViewer);
  return (
    <div className="place-lead">
      <p>
        {say('No run yet. Every run you record appears here, ready to replay and to hand out.')}
      </p>
      {!onlyWatches && (
        <Button weight="main" onClick={() => goTo('prepare')}>
          {say('Prepare one, or rehearse')}
        </Button>
      )}
    </div>
  );
}
