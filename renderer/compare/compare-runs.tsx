import { useEffect, useMemo, useState } from 'react';
import { type Mark, type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import type { Film } from '../replay/index.ts';
import { useFilm } from '../replay/index.ts';
import { hasRemarks, problemWords, RunRemarks, signs } from '../words/index.ts';
import { CompareTable } from './compare-table.tsx';
import { Overlay } from './overlay.tsx';
import { runFacts } from './run-facts.ts';
import { traceLooks } from './trace-look.ts';

interface CompareRunsProps {
  readonly runs: readonly RunSummary[];
  readonly onClose: () => void;
}

/** Two to four recorded runs over each other, vapour arrival at zero, and their figures side by side. */
export function CompareRuns({ runs, onClose }: CompareRunsProps) {
  const [films, setFilms] = useState<Readonly<Record<string, BookedFilm>>>({});
  const isReady = runs.every(({ runId }) => films[runId] !== undefined);
  const compared = useMemo(
    () =>
      runs.flatMap(({ runId }) => {
        const found = films[runId];
        if (found === undefined) return [];
        return [{ film: found.film, facts: runFacts(found.film, found.lateMarks) }];
      }),
    [runs, films],
  );
  const late = compared.filter(({ facts }) => facts.arrivedS === null);
  return (
    <main className="place compare" id="place">
      <div className="compare-head">
        <h1>{say('Compare runs')}</h1>
        <Button onClick={onClose}>{say('Back to the library')}</Button>
      </div>
      {!isReady && (
        <ul className="compare-loading">
          {runs.map(({ runId, name }) => (
            <FilmLine
              key={runId}
              runId={runId}
              name={name}
              onFilm={(film) => setFilms((known) => ({ ...known, [runId]: film }))}
            />
          ))}
        </ul>
      )}
      {isReady && (
        <>
          <p className="place-lead">
            {say(
              'Time counts from vapour arrival, so that a slow warm-up does not shift the rest. {prompt} is the heat-off prompt.',
              { prompt: signs.prompt },
            )}
          </p>
          {late.map(({ film }) => (
            <p key={film.identity.runId} className="warning">
              {say('In “{name}” no vapour reached the head: it has no line here.', {
                name: film.identity.name,
              })}
            </p>
          ))}
          {runs.map((run, index) =>
            hasRemarks(run) ? (
              <div key={run.runId} className="compare-remarks">
                <p>
                  <strong>
                    {traceLooks[index]?.letter} {run.name}
                  </strong>
                </p>
                <RunRemarks run={run} />
              </div>
            ) : null,
          )}
          <Overlay runs={compared} />
          <CompareTable runs={compared} />
        </>
      )}
    </main>
  );
}

/** A run with what was measured after it. */
interface BookedFilm {
  readonly film: Film;
  readonly lateMarks: readonly Mark[];
}

interface FilmLineProps {
  readonly runId: string;
  readonly name: string;
  readonly onFilm: (film: BookedFilm) => void;
}

/** One run on its way: hands its film on once. */
function FilmLine({ runId, name, onFilm }: FilmLineProps) {
  const progress = useFilm(runId);
  const ready = progress.step === 'ready' ? progress : null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: once a film, whoever asks for it
  useEffect(() => {
    if (ready) onFilm(ready);
  }, [ready?.film]);
  if (progress.step === 'failed') {
    return (
      <li className="warning">
        {name}: {problemWords(progress.problem)}
      </li>
    );
  }
  return (
    <li role="status">
      {name}: {ready ? say('ready') : say('going through the run …')}
      <br />
      <progress
        value={ready ? 1 : progress.step === 'computing' ? progress.done : undefined}
        max={1}
        aria-label={say('How far {name} is', { name })}
      />
    </li>
  );
}
