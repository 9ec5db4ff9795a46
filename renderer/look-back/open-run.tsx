import { Button } from '../design/index.ts';
import { problemWords } from '../words/index.ts';
import { Replay } from './replay.tsx';
import { useFilm } from './use-film.ts';

interface OpenRunProps {
  readonly runId: string;
  readonly onClose: () => void;
}

export function OpenRun({ runId, onClose }: OpenRunProps) {
  const progress = useFilm(runId);
  if (progress.step === 'ready')
    return <Replay film={progress.film} agreement={progress.agreement} onClose={onClose} />;
  const done = progress.step === 'computing' ? progress.done : undefined;
  return (
    <main className="place" id="place">
      <h1>Look back</h1>
      {progress.step === 'failed' ? (
        <p className="warning">{problemWords(progress.problem)}</p>
      ) : (
        <p className="place-lead" role="status">
          {progress.step === 'reading' ? 'Reading the run …' : 'Going through the run once more …'}
          <br />
          <progress value={done} max={1} aria-label="How far" />
        </p>
      )}
      <Button onClick={onClose}>Back to the library</Button>
    </main>
  );
}
