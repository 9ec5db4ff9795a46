import { type ReactNode, useCallback, useRef, useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { ForTheClass } from '../lesson-script/index.ts';
import { goTo, useBench, useLiveView } from '../parts/index.ts';
import { Invitation } from '../prepare/index.ts';
import { isRunUnderWay, isViewer, mayCommand, type RunView } from '../stores/index.ts';
import { useKeptWarm } from '../warmth/index.ts';
import { ClassroomView } from './classroom-view.tsx';
import { FermentScreen } from './ferment-screen.tsx';
import { fullScreenIfAllowed } from './full-screen.ts';
import { MarkBar } from './mark-bar.tsx';
import { StopDialog } from './stop-dialog.tsx';
import { TestCard } from './test-card.tsx';
import { WatchEnded } from './watch-ended.tsx';
import { WatchRun } from './watch-run.tsx';
import { WhatComes } from './what-comes.tsx';

/** Watch: the running run, or the way to one. */
export function WatchPlace() {
  const view = useLiveView((live) => live);
  const canAct = useBench(mayCommand);
  const onlyWatches = useBench(isViewer);
  const isKnown = useBench(({ recording }) => recording !== null);
  const isUnderWay = useBench(isRunUnderWay);
  const isSaving = useBench(
    ({ recording }) => recording?.runId != null && recording.runId === view?.runId,
  );
  const isFermentKept = useKeptWarm() !== null;
  const [isStopping, setStopping] = useState(false);
  const [chosen, setClassroom] = useState<boolean | null>(null);
  // A window for the class opens as the class needs it.
  const isClassroom = chosen ?? onlyWatches;
  const isComingBack = useRef(false);
  const closeClassroom = useCallback(() => {
    isComingBack.current = true;
    setClassroom(false);
  }, []);
  // The focus goes back to where it came from, as after a dialog.
  const focusComingBack = useCallback((button: HTMLButtonElement | null) => {
    if (button === null || !isComingBack.current) return;
    isComingBack.current = false;
    // On a phone the sentence stands above it, and is to stay in sight.
    button.focus({ preventScroll: true });
  }, []);
  const openClassroom = () => {
    setClassroom(true);
    fullScreenIfAllowed();
  };
  const classroomButton = (
    <Button ref={focusComingBack} onClick={openClassroom}>
      {say('Classroom view')}
    </Button>
  );
  if (view === null) {
    if (!isKnown || isUnderWay) return <Opening isUnderWay={isUnderWay} />;
    if (!onlyWatches) return <NothingToWatch />;
    if (isClassroom && isFermentKept) {
      return <FermentScreen fermentId={null} onClose={closeClassroom} />;
    }
    return isClassroom ? (
      <TestCard onClose={closeClassroom} />
    ) : (
      <NothingYet>{classroomButton}</NothingYet>
    );
  }
  const isRunning = view.endedS === null;
  if (isClassroom) return <ClassroomView view={view} onClose={closeClassroom} />;
  if (!isRunning && isSaving) return <StillSaving view={view}>{classroomButton}</StillSaving>;
  if (!isRunning) return <WatchEnded key={view.runId} view={view} stripExtra={classroomButton} />;
  return (
    <main className="watch" id="place">
      <WatchRun
        view={view}
        stripExtra={classroomButton}
        aside={view.snapshot && <ForTheClass stage={view.snapshot.stage.stage} />}
      />
      <div className="watch-foot">
        {onlyWatches && <p className="watch-ended">{say('This window only shows the run.')}</p>}
        {!onlyWatches && <MarkBar view={view} />}
        <div className="watch-foot-end">
          {!onlyWatches && (
            <Button disabled={!canAct} onClick={() => setStopping(true)}>
              {say('Stop …')}
            </Button>
          )}
        </div>
      </div>
      {isStopping && <StopDialog view={view} onClose={() => setStopping(false)} />}
    </main>
  );
}

/** A run that is over, on a disk that has not taken all of it yet. */
function StillSaving({ view, children }: { readonly view: RunView; readonly children: ReactNode }) {
  return (
    <main className="watch" id="place">
      <WatchRun view={view} stripExtra={children} />
      <div className="watch-foot">
        <p className="watch-ended" role="status">
          {say('What was heard last is still being saved. Leave the program open.')}
        </p>
      </div>
    </main>
  );
}

/** A window that has just been opened must not say that nothing runs before it knows. */
function Opening({ isUnderWay }: { readonly isUnderWay: boolean }) {
  return (
    <main className="place" id="place">
      <h1>{isUnderWay ? say('Opening the run under way …') : say('Looking for a run …')}</h1>
      {isUnderWay && (
        <p className="place-lead">
          {say('It goes on being recorded. Keep your eyes on the still until it is shown here.')}
        </p>
      )}
    </main>
  );
}

/** What the class sees before the first run. */
function NothingYet({ children }: { readonly children: ReactNode }) {
  return (
    <main className="place place-calm" id="place">
      <h1>{say('The run has not begun')}</h1>
      <p className="place-lead">{say('This screen shows it as soon as it does.')}</p>
      <div className="choices">{children}</div>
      <WhatComes />
    </main>
  );
}

function NothingToWatch() {
  const canAct = useBench(mayCommand);
  return (
    <main className="place" id="place">
      <h1>{say('Nothing is running')}</h1>
      <p className="place-lead">
        {say('A run is set up in Prepare. Or let the rehearsal rig run one for you, here and now.')}
      </p>
      <div className="choices">
        <Button weight="main" size="large" onClick={() => goTo('prepare')}>
          {say('Go to Prepare')}
        </Button>
        <Button size="large" onClick={() => goTo('look-back')}>
          {say('Look back at earlier runs')}
        </Button>
      </div>
      <Invitation canAct={canAct} />
      <WhatComes />
    </main>
  );
}
