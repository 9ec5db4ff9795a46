import { useMemo } from 'react';
import { cautionsAt, say, told } from '#shared-core';
import { usePreferences } from '../parts/index.ts';
import type { FilmProgress } from '../replay/index.ts';
import { problemWords, RunRemarks, useWords } from '../words/index.ts';
import { debriefOf, volumeOf } from './debrief-of.ts';
import { afterLimitWords, reactionWords } from './debrief-words.ts';

/** Right after Stop: what the run came to, and what is still to do at the bench. */
export function Debrief({ progress }: { readonly progress: FilmProgress }) {
  const words = useWords();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const found = useMemo(() => {
    if (progress.step !== 'ready') return null;
    const { film, lateMarks } = progress;
    const plateau = film.frames.at(-1)?.snapshot?.plateau;
    return plateau ? debriefOf({ ...film, plateau }, lateMarks) : null;
  }, [progress]);
  return (
    <section className="debrief" aria-labelledby="debrief-title">
      <h2 id="debrief-title">{say('What it came to')}</h2>
      {progress.step === 'failed' && <p>{problemWords(progress.problem)}</p>}
      {(progress.step === 'reading' || progress.step === 'computing') && (
        <p role="status">{say('Going through the run …')}</p>
      )}
      {progress.step === 'ready' && <RunRemarks run={progress.summary} />}
      {found && (
        <dl className="findings">
          <div>
            <dt>{say('Collected')}</dt>
            <dd>
              {found.cuts.length === 0 && say('No volume was marked: enter it under Books.')}
              {found.cuts.map((cut) => (
                <p key={cut.number}>
                  {say('Receiver {number}:', { number: cut.number })} <CutWords cut={cut} />
                </p>
              ))}
            </dd>
          </div>
          <div>
            <dt>{say('Heat off')}</dt>
            <dd>{reactionWords(found.reaction)}</dd>
          </div>
          <div>
            <dt>
              {say('After the {number} % vol limit', {
                number: words.number(
                  progress.step === 'ready' ? progress.film.settings.leastStrengthAbv : 0,
                  0,
                ),
              })}
            </dt>
            <dd>{afterLimitWords(found.afterLimit, decimal)}</dd>
          </div>
        </dl>
      )}
      <CleanUp />
    </section>
  );
}

function CutWords({ cut }: { readonly cut: ReturnType<typeof debriefOf>['cuts'][number] }) {
  const words = useWords();
  const volumeMl = volumeOf(cut);
  const strength = cut.booked?.strengthAbv ?? null;
  return (
    <>
      <strong className="number">
        {volumeMl === null
          ? say('volume not marked')
          : words.quantity(volumeMl, volumeMl < 10 ? 1 : 0, 'mL')}
      </strong>
      {strength && (
        <span className="number">
          {' '}
          {say('of {strength}, {what}', {
            strength: words.range(strength, 0, '% vol'),
            what:
              cut.strengthFrom === 'measured' ? say('measured') : say('by the head temperature'),
          })}
        </span>
      )}
    </>
  );
}

const cleanUp = cautionsAt('debrief');

function CleanUp() {
  return (
    <details className="why">
      <summary>{say('Clean up')}</summary>
      <ul className="clean-up">
        {cleanUp.map(({ id, act, because }) => (
          <li key={id}>
            <strong>{told(act)}</strong> {told(because)}
          </li>
        ))}
      </ul>
    </details>
  );
}
