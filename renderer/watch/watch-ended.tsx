import { type ReactNode, useState } from 'react';
import { say } from '#shared-core';
import { BooksOfRun } from '../books/index.ts';
import { Debrief } from '../debrief/index.ts';
import { useFilm } from '../replay/index.ts';
import type { RunView } from '../stores/index.ts';
import { RunEnded } from './run-ended.tsx';
import { WatchRun } from './watch-run.tsx';

interface WatchEndedProps {
  readonly view: RunView;
  readonly stripExtra: ReactNode;
}

/** The run that has just ended, with what it came to and the next steps. */
export function WatchEnded({ view, stripExtra }: WatchEndedProps) {
  const { runId } = view;
  const progress = useFilm(runId);
  const [hasBooksOpen, setBooksOpen] = useState(false);
  if (hasBooksOpen && progress.step === 'ready') {
    const { film, summary, lateMarks } = progress;
    const close = () => setBooksOpen(false);
    return (
      <BooksOfRun
        film={film}
        summary={summary}
        lateMarks={lateMarks}
        closeWords={say('Back to the run')}
        onClose={close}
      />
    );
  }
  return (
    <main className="watch" id="place">
      <WatchRun view={view} aside={<Debrief progress={progress} />} stripExtra={stripExtra} />
      <div className="watch-foot">
        <RunEnded runId={runId} progress={progress} onBooks={() => setBooksOpen(true)} />
      </div>
    </main>
  );
}
