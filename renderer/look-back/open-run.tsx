import { isVolumeTable, say } from '#shared-core';
import { BlindRun } from '../blind/index.ts';
import { BooksOfRun } from '../books/index.ts';
import { VolumeOfRun } from '../by-volume/index.ts';
import { WhatIf } from '../compare/index.ts';
import { Button } from '../design/index.ts';
import { ProofOfRun } from '../proof/index.ts';
import { useFilm } from '../replay/index.ts';
import { problemWords } from '../words/index.ts';
import { Replay } from './replay.tsx';

/** What a recorded run is opened for. */
export type OpenFor = 'replay' | 'guess' | 'what-if' | 'books' | 'by-volume' | 'proof';

interface OpenRunProps {
  readonly runId: string;
  readonly openFor: OpenFor;
  readonly onClose: () => void;
}

export function OpenRun({ runId, openFor, onClose }: OpenRunProps) {
  const progress = useFilm(runId);
  if (progress.step === 'ready') {
    const { film, summary, lateMarks, agreement } = progress;
    // A table without times has no moment to replay or to guess.
    const needsTimes = openFor === 'replay' || openFor === 'guess' || openFor === 'what-if';
    if (openFor === 'by-volume' || (needsTimes && isVolumeTable(film.inputs))) {
      return <VolumeOfRun film={film} summary={summary} lateMarks={lateMarks} onClose={onClose} />;
    }
    if (openFor === 'guess') return <BlindRun film={film} summary={summary} onClose={onClose} />;
    if (openFor === 'what-if') return <WhatIf film={film} summary={summary} onClose={onClose} />;
    if (openFor === 'books') {
      return (
        <BooksOfRun
          film={film}
          summary={summary}
          lateMarks={lateMarks}
          closeWords={say('Back to the library')}
          onClose={onClose}
        />
      );
    }
    if (openFor === 'proof') {
      return <ProofOfRun film={film} summary={summary} lateMarks={lateMarks} onClose={onClose} />;
    }
    return <Replay film={film} summary={summary} agreement={agreement} onClose={onClose} />;
  }
  const done = progress.step === 'computing' ? progress.done : undefined;
  return (
    <main className="place" id="place">
      <h1>{say('Look back')}</h1>
      {progress.step === 'failed' ? (
        <p className="warning">{problemWords(progress.problem)}</p>
      ) : (
        <p className="place-lead" role="status">
          {progress.step === 'reading'
            ? say('Reading the run …')
            : say('Going through the run once more …')}
          <br />
          <progress value={done} max={1} aria-label={say('How far')} />
        </p>
      )}
      <Button onClick={onClose}>{say('Back to the library')}</Button>
    </main>
  );
}
