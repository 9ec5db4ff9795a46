import { useMemo, useRef, useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench } from '../parts/index.ts';
import type { Film } from '../replay/index.ts';
import { type Agreement, agreementWords, ReplayBar, useReplay } from '../replay/index.ts';
import { isViewer, mayCommand } from '../stores/index.ts';
import { WatchRun } from '../watch/index.ts';
import { hasRemarks, RunRemarks, signs, useWords } from '../words/index.ts';
import { AnnotateDialog } from './annotate-dialog.tsx';
import { annotationsIn } from './annotations.ts';
import { MomentList } from './moment-list.tsx';
import { type Moment, momentsOf, timeShowing } from './moments.ts';

interface ReplayProps {
  readonly film: Film;
  readonly summary: RunSummary;
  readonly agreement: Agreement;
  readonly onClose: () => void;
}

/** A recorded run in the parts of Watch, with time in the person's hands. */
export function Replay({ film, summary: opened, agreement, onClose }: ReplayProps) {
  const words = useWords();
  const canAct = useBench(mayCommand);
  const onlyWatches = useBench(isViewer);
  const [summary, setSummary] = useState(opened);
  const [isAnnotating, setAnnotating] = useState(false);
  const place = useRef<HTMLElement>(null);
  const { state, dispatch, step, frame } = useReplay(film);
  const moments = useMemo(
    () =>
      momentsOf(
        film.verdicts,
        film.frames.at(-1)?.marks ?? [],
        annotationsIn(summary.notes),
        words.mark,
      ),
    [film, summary.notes, words],
  );
  const jump = (moment: Moment) => {
    dispatch({ type: 'jumped', timeS: timeShowing(film, moment) });
    // On a small screen the list stands below what it leads to.
    place.current?.scrollTo({ top: 0 });
  };
  const annotate = () => {
    dispatch({ type: 'pause' });
    setAnnotating(true);
  };
  return (
    <main className="watch replay" id="place" ref={place}>
      <div className="replay-head">
        <p>
          <strong>{say('Replay')}</strong> · {summary.name}{' '}
          <span className="soft">· {agreementWords(agreement)}</span>
        </p>
        <Button onClick={onClose}>{say('Back to the library')}</Button>
        {/* On a phone the side is read below the strip: what all of it hangs on must be known before. */}
        {hasRemarks(summary) && (
          <details className="why replay-remarks">
            <summary>
              {(summary.leftOut ?? []).length > 0 && signs.problem}{' '}
              {say('What to know of this record')}
            </summary>
            <RunRemarks run={summary} />
          </details>
        )}
      </div>
      {frame && (
        <WatchRun
          view={frame}
          stripExtra={
            !onlyWatches && (
              <Button disabled={!canAct} onClick={annotate}>
                {say('Annotate …')}
              </Button>
            )
          }
          aside={
            <>
              <div className="replay-side-remarks">
                <RunRemarks run={summary} />
              </div>
              <MomentList moments={moments} timeS={state.timeS} onJump={jump} />
            </>
          }
        />
      )}
      <ReplayBar state={state} dispatch={dispatch} step={step} />
      {isAnnotating && (
        <AnnotateDialog
          summary={summary}
          timeS={state.timeS}
          onKept={setSummary}
          onClose={() => setAnnotating(false)}
        />
      )}
    </main>
  );
}
