import { useEffect, useMemo, useReducer, useRef, useState } from 'react';
import { plateauOfRun, type RunSummary, say } from '#shared-core';
import { Button, ChoiceField } from '../design/index.ts';
import type { Film } from '../replay/index.ts';
import { ReplayBar, useReplay } from '../replay/index.ts';
import { bandOnProbe } from '../strip/index.ts';
import { RunRemarks } from '../words/index.ts';
import { blindAfter, guessesOf, guessKinds, noGuesses } from './blind-state.ts';
import { BlindStrip, closeUpC } from './blind-strip.tsx';
import { courseOfFilm } from './course-of-film.ts';
import { GuessControls } from './guess-controls.tsx';
import { GuessTable } from './guess-table.tsx';
import { recordedAnswers } from './recorded-answer.ts';
import { scoreGuess } from './score-guess.ts';
import { ScoreTable } from './score-table.tsx';

interface BlindRunProps {
  readonly film: Film;
  readonly summary: RunSummary;
  readonly onClose: () => void;
}

/** The scale ends at the half hour after the run's end [s]. */
const scaleStepS = 1800;

const heightOptions = [
  { value: 'whole', label: say('Whole scale') },
  { value: 'close-up', label: `${closeUpC.join('–')} °C` },
] as const;

/** A recorded run with everything the program thinks of it hidden, until the class has said what it thinks. */
export function BlindRun({ film, summary, onClose }: BlindRunProps) {
  const [state, dispatch] = useReducer(blindAfter, noGuesses);
  const [height, setHeight] = useState<'whole' | 'close-up'>('whole');
  const last = film.frames[film.frames.length - 1];
  const course = useMemo(() => courseOfFilm(film), [film]);
  const answers = useMemo(
    () => recordedAnswers(film.verdicts, last?.marks ?? [], plateauOfRun(film)),
    [film, last],
  );
  const { isRevealed } = state;
  const title = useRef<HTMLHeadingElement>(null);
  const wasRevealed = useRef(isRevealed);
  useEffect(() => {
    // What was pressed is gone, and what it led to stands at the top.
    if (wasRevealed.current !== isRevealed) title.current?.focus();
    wasRevealed.current = isRevealed;
  }, [isRevealed]);
  const guesses = guessesOf(state);
  // The end of the scale, as the end of the trace, would tell when the heat was taken off.
  const scaleEndS = scaleStepS * (Math.floor(film.endS / scaleStepS) + 1);
  const replay = useReplay({ ...film, endS: scaleEndS });
  const uncoveredToS = Math.min(film.endS, course.heatOffS ?? film.endS);
  // As on the run strip: what stands beside the probe's trace stands on the probe's scale.
  const band = last?.snapshot ? bandOnProbe(last.snapshot.plateau) : null;
  const shownToS = isRevealed ? film.endS : Math.min(replay.state.timeS, uncoveredToS);
  return (
    <main className="place blind" id="place">
      <div className="blind-head">
        <h1 ref={title} tabIndex={-1}>
          {say('Guess first')}
        </h1>
        <ChoiceField
          name={say('Temperature shown')}
          isNameHidden
          options={heightOptions}
          value={height}
          onValue={setHeight}
        />
        <Button onClick={onClose}>{say('Back to the library')}</Button>
      </div>
      <p className="place-lead">
        {isRevealed
          ? say('“{name}”: your flags beside the record.', { name: film.identity.name })
          : say(
              '“{name}”: play the run and set your flags. Stages, plateau band, forecast and prompts stay hidden until you reveal the record.',
              { name: film.identity.name },
            )}
      </p>
      {isRevealed && <RunRemarks run={summary} />}
      <BlindStrip
        head={last?.tracks.head?.series ?? null}
        endS={isRevealed ? film.endS : scaleEndS}
        shownToS={shownToS}
        isCloseUp={height === 'close-up'}
        guesses={guesses}
        record={isRevealed && band ? { answers, band } : null}
        onGuess={(timeS) => dispatch({ type: 'guessed', timeS })}
      />
      {isRevealed ? (
        <>
          {guessKinds.map((kind) => (
            <ScoreTable
              key={kind}
              kind={kind}
              answer={answers[kind]}
              scores={guesses
                .filter((guess) => guess.kind === kind)
                .flatMap((guess) => scoreGuess(guess, answers, course) ?? [])}
              reactionTimeS={film.settings.reactionTimeS}
            />
          ))}
          <Button onClick={() => dispatch({ type: 'begun-anew' })}>
            {say('Hide it and guess anew')}
          </Button>
        </>
      ) : (
        <>
          <ReplayBar state={replay.state} dispatch={replay.dispatch} step={replay.step} />
          {replay.state.timeS > uncoveredToS && (
            <p role="status">{say('No more is shown until you reveal it; the rest would tell.')}</p>
          )}
          <GuessControls state={state} dispatch={dispatch} shownToS={shownToS} />
          <GuessTable state={state} dispatch={dispatch} />
          <Button
            weight="main"
            size="large"
            disabled={guesses.length === 0}
            onClick={() => dispatch({ type: 'revealed' })}
          >
            {say('Reveal the record')}
          </Button>
        </>
      )}
    </main>
  );
}
