import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { exportRun } from '../exchange/index.ts';
import { goTo, useBench, usePreferences, useWindowParts } from '../parts/index.ts';
import type { FilmProgress } from '../replay/index.ts';
import { RenameDialog } from '../replay/index.ts';
import { isViewer } from '../stores/index.ts';

interface RunEndedProps {
  readonly runId: string;
  readonly progress: FilmProgress;
  readonly onBooks: () => void;
}

/** What comes after a run, each one press away: name it, its books, its readings as a table, all the rest in the library. */
export function RunEnded({ runId, progress, onBooks }: RunEndedProps) {
  const { service, bench } = useWindowParts();
  const onlyWatches = useBench(isViewer);
  const format = usePreferences(({ decimal }) => (decimal === ',' ? 'csv-semicolon' : 'csv'));
  const [isNaming, setNaming] = useState(false);
  const isReady = progress.step === 'ready';
  return (
    <div className="watch-ended">
      <p>{say('The run is in the library.')}</p>
      {!onlyWatches && (
        <>
          <Button disabled={!isReady} onClick={() => setNaming(true)}>
            {say('Name it …')}
          </Button>
          <Button disabled={!isReady} onClick={onBooks}>
            {say('Books')}
          </Button>
          <Button onClick={() => void exportRun(service, bench, runId, format)}>
            {say('Export CSV')}
          </Button>
        </>
      )}
      <Button weight="main" onClick={() => goTo('look-back')}>
        {say('Look back')}
      </Button>
      {isNaming && isReady && (
        <RenameDialog run={progress.summary} onClose={() => setNaming(false)} />
      )}
    </div>
  );
}
