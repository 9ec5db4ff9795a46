import { useMemo } from 'react';
import { Button } from '../design/index.ts';
import { WatchRun } from '../watch/index.ts';
import { useWords } from '../words/use-words.ts';
import { type Agreement, agreementWords } from './agreement.ts';
import type { Film } from './film.ts';
import { MomentList } from './moment-list.tsx';
import { momentsOf } from './moments.ts';
import { ReplayBar } from './replay-bar.tsx';
import { useReplay } from './use-replay.ts';

interface ReplayProps {
  readonly film: Film;
  readonly agreement: Agreement;
  readonly onClose: () => void;
}

/** A recorded run in the parts of Watch, with time in the person's hands. */
export function Replay({ film, agreement, onClose }: ReplayProps) {
  const words = useWords();
  const { state, dispatch, step, frame } = useReplay(film);
  const moments = useMemo(
    () => momentsOf(film.verdicts, film.frames.at(-1)?.marks ?? [], words.mark),
    [film, words],
  );
  return (
    <main className="watch replay" id="place">
      <div className="replay-head">
        <p>
          <strong>Replay</strong> · {film.identity.name}{' '}
          <span className="soft">· {agreementWords(agreement)}</span>
        </p>
        <Button onClick={onClose}>Back to the library</Button>
      </div>
      {frame && (
        <WatchRun
          view={frame}
          aside={
            <MomentList
              moments={moments}
              timeS={state.timeS}
              onJump={(timeS) => dispatch({ type: 'jumped', timeS: timeS + 0.01 })}
            />
          }
        />
      )}
      <ReplayBar state={state} dispatch={dispatch} step={step} />
    </main>
  );
}
