import { useCallback, useRef, useState } from 'react';
import { Button } from '../design/index.ts';
import { goTo, useBench, useLiveView } from '../parts/index.ts';
import { Invitation } from '../prepare/index.ts';
import { isRunUnderWay, isViewer, mayCommand } from '../stores/index.ts';
import { ClassroomView } from './classroom-view.tsx';
import { MarkBar } from './mark-bar.tsx';
import { StopDialog } from './stop-dialog.tsx';
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
  const [isStopping, setStopping] = useState(false);
  const [isClassroom, setClassroom] = useState(false);
  const isComingBack = useRef(false);
  const closeClassroom = useCallback(() => {
    isComingBack.current = true;
    setClassroom(false);
  }, []);
  // The focus goes back to where it came from, as after a dialog.
  const focusComingBack = useCallback((button: HTMLButtonElement | null) => {
    if (button === null || !isComingBack.current) return;
    isComingBack.current = false;
    button.focus();
  }, []);
  if (view === null) {
    if (!isKnown || isUnderWay) return <Opening isUnderWay={isUnderWay} />;
    return onlyWatches ? <NothingYet /> : <NothingToWatch />;
  }
  const openClassroom = () => {
    setClassroom(true);
    // Where full screen is not allowed, the view still covers the window.
    document.documentElement.requestFullscreen?.().catch(() => {});
  };
  const isRunning = view.endedS === null;
  if (isClassroom) return <ClassroomView view={view} onClose={closeClassroom} />;
  const stripExtra = (
    <Button ref={focusComingBack} onClick={openClassroom}>
      Classroom view
    </Button>
  );
  if (!isRunning) return <WatchEnded key={view.runId} view={view} stripExtra={stripExtra} />;
  return (
    <main className="watch" id="place">
      <WatchRun view={view} stripExtra={stripExtra} />
      <div className="watch-foot">
        {onlyWatches && <p className="watch-ended">This window only shows the run.</p>}
        {!onlyWatches && <MarkBar view={view} />}
        <div className="watch-foot-end">
          {!onlyWatches && (
            <Button disabled={!canAct} onClick={() => setStopping(true)}>
              Stop …
            </Button>
          )}
        </div>
      </div>
      {isStopping && <StopDialog view={view} onClose={() => setStopping(false)} />}
    </main>
  );
}

/** A window that has just been opened must not say that nothing runs before it knows. */
function Opening({ isUnderWay }: { readonly isUnderWay: boolean }) {
  return (
    <main className="place" id="place">
      <h1>{isUnderWay ? 'Opening the run under way …' : 'Looking for a run …'}</h1>
      {isUnderWay && (
        <p className="place-lead">
          It goes on being recorded. Keep your eyes on the still until it is shown here.
        </p>
      )}
    </main>
  );
}

/** What the class sees before the first run. */
function NothingYet() {
  return (
    <main className="place place-calm" id="place">
      <h1>The run has not begun</h1>
      <p className="place-lead">This screen shows it as soon as it does.</p>
      <WhatComes />
    </main>
  );
}

function NothingToWatch() {
  const canAct = useBench(mayCommand);
  return (
    <main className="place" id="place">
      <h1>Nothing is running</h1>
      <p className="place-lead">
        A run is set up in Prepare. Or let the rehearsal rig run one for you, here and now.
      </p>
      <div className="choices">
        <Button weight="main" size="large" onClick={() => goTo('prepare')}>
          Go to Prepare
        </Button>
        <Button size="large" onClick={() => goTo('look-back')}>
          Look back at earlier runs
        </Button>
      </div>
      <Invitation canAct={canAct} />
      <WhatComes />
    </main>
  );
}
