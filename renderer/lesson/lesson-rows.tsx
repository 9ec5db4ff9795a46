import { useMemo } from 'react';
import { assertNever, say } from '#shared-core';
import { Why } from '../design/index.ts';
import { useBench, usePrepare } from '../parts/index.ts';
import { mayCommand, type RunView } from '../stores/index.ts';
import { timeOfDayWords, untilWords, useWords } from '../words/index.ts';
import { bellAfter, fitsUntil, fitWords } from './bell.ts';
import { BellField } from './bell-field.tsx';
import {
  type Expectation,
  type ExpectedTime,
  expectedTime,
  expectedTimeWords,
  type Stretch,
  startByClock,
} from './expected-time.ts';
import { useRunningLesson } from './use-running-lesson.ts';

interface LessonRowsProps {
  readonly view: RunView;
  readonly isLive: boolean;
  /** The computer's clock [ms]. */
  readonly nowMs?: () => number;
}

/** When vapour and heat off are expected, by the clock, and whether that is before the bell. */
export function LessonRows({ view, isLive, nowMs = Date.now }: LessonRowsProps) {
  const words = useWords();
  const canAct = useBench(mayCommand);
  const timeScale = useBench(({ probe }) => probe?.source?.timeScale ?? 1);
  const bell = usePrepare((state) => state.draft.bell);
  const { vapour, heatOff } = useRunningLesson(view, isLive);
  const { snapshot, startedAtIso, settings } = view;
  const recordedMs = Date.parse(startedAtIso ?? '');
  const timeNowS = snapshot?.timeS ?? 0;
  // Looked at as a snapshot comes: while none does, what was expected stays where it was.
  const byClockMs = useMemo(
    () => startByClock(recordedMs, timeNowS, nowMs()),
    [recordedMs, timeNowS, nowMs],
  );
  if (snapshot === null) return null;
  const { forecast, timeS, stage } = snapshot;
  // A rehearsal that flies is soon elsewhere than the clock on the wall.
  const startMs = isLive ? (timeScale > 1 ? Number.NaN : byClockMs) : recordedMs;
  const hasForecast = stage.stage !== 'warm-up';
  const bellMs = Number.isNaN(startMs) ? null : bellAfter(bell, startMs);
  const heatOffName = say('Heat off, at {leastStrength} % vol', {
    leastStrength: words.number(settings.leastStrengthAbv, 0),
  });
  const doubt = hasForecast ? (forecast?.doubt ?? null) : null;
  const isOver = stage.stage === 'tail' || stage.stage === 'cool-down';
  return (
    <>
      {vapour && (
        <TimeRow name={say('Vapour at the head')} range={vapour} startMs={startMs} nowS={timeS} />
      )}
      {heatOff && (
        <TimeRow
          name={heatOffName}
          range={heatOff}
          startMs={startMs}
          nowS={timeS}
          distillate={
            hasForecast && forecast?.distillateMlAtEnd
              ? words.range(forecast.distillateMlAtEnd, 0, 'mL')
              : null
          }
        >
          {hasForecast && forecast?.wouldHelp && (
            <p className="soft">{words.said(forecast.wouldHelp)}</p>
          )}
          {doubt && (
            <>
              <p className="soft">{say('The model and this still disagree.')}</p>
              <Why of={heatOffName}>
                <p>{words.said(doubt)}</p>
              </Why>
            </>
          )}
        </TimeRow>
      )}
      {heatOff === null && doubt && !isOver && (
        <div>
          <dt>{heatOffName}</dt>
          <dd>
            <strong>{say('not foreseen')}</strong>
            <p className="soft">{words.said(doubt)}</p>
          </dd>
        </div>
      )}
      {isLive && canAct && !isOver && timeScale === 1 && (
        <div>
          <dt>{say('The lesson')}</dt>
          <dd>
            <BellField
              verdict={bellMs && heatOff ? fitWords(fitsUntil(bellMs, startMs, heatOff)) : null}
            />
          </dd>
        </div>
      )}
    </>
  );
}

interface TimeRowProps {
  readonly name: string;
  readonly range: Expectation;
  /** NaN where nobody knows when the run began: then only what is ahead is told. */
  readonly startMs: number;
  readonly nowS: number;
  /** How much will have come over when it is so; null where that is not known. */
  readonly distillate?: string | null;
  readonly children?: React.ReactNode;
}

function TimeRow({ name, range, startMs, nowS, distillate = null, children }: TimeRowProps) {
  const ahead = { low: range.low - nowS, high: range.high - nowS };
  const knownStartMs = Number.isNaN(startMs) ? null : startMs;
  const at = expectedTime(range, knownStartMs ?? 0, (knownStartMs ?? 0) + 1000 * nowS);
  const besides = [
    besideWords(at, ahead, knownStartMs !== null),
    distillate === null ? null : distillateWords(at, distillate),
  ].filter((words) => words !== null);
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <strong className="number">
          {knownStartMs === null && at.kind === 'window'
            ? untilWords(ahead)
            : expectedTimeWords(at)}
        </strong>
        {besides.length > 0 && <span className="soft number"> {besides.join(' · ')}</span>}
        {children}
      </dd>
    </div>
  );
}

/** The same as a time to wait, or from when on it must be reckoned with. */
function besideWords(at: ExpectedTime, ahead: Stretch, hasClock: boolean): string | null {
  switch (at.kind) {
    case 'window':
      return hasClock ? untilWords(ahead) : null;
    case 'too-early':
      return hasClock
        ? say('not before {time}', {
            time: timeOfDayWords(new Date(at.notBeforeMs).toISOString()),
          })
        : say('not in the next {minutes} min', { minutes: Math.floor(ahead.low / 60) });
    case 'from-now-on':
      return soonWords(Math.floor(ahead.low / 60));
    case 'overdue':
      return null;
    default:
      return assertNever(at);
  }
}

/** A range from the next minutes to far beyond them is no call: it says until when nobody need look, and to look from then on. */
function soonWords(minutes: number): string {
  return minutes >= 1
    ? say('not in the next {minutes} min; perhaps soon after, perhaps much later', { minutes })
    : say('perhaps within minutes, perhaps much later: keep an eye on the head');
}

/** What will have come over hangs on the charge, not on the heat: it is known before any time is, and then it is what to look for. */
function distillateWords({ kind }: ExpectedTime, distillate: string): string {
  return kind === 'window'
    ? say('{distillateMlAtEnd} collected by then', { distillateMlAtEnd: distillate })
    : say('expected once {distillateMlAtEnd} have come over', { distillateMlAtEnd: distillate });
}
