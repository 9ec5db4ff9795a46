import { useMemo } from 'react';
import {
  indexAtTime,
  niceTicks,
  type PlateauBand,
  reduceToWidth,
  type Series,
  say,
} from '#shared-core';
import { type Axis, PlotPaper, type PlotScale, PressArea, timeAxis } from '../figures/index.ts';
import { clockWords, inMidSentence, signs, useWords } from '../words/index.ts';
import { type Guess, groupLetters, guessKinds, guessNames } from './blind-state.ts';
import type { RecordedAnswers } from './recorded-answer.ts';

interface BlindStripProps {
  readonly head: Series | null;
  readonly endS: number;
  /** The trace is uncovered up to here. */
  readonly shownToS: number;
  readonly isCloseUp: boolean;
  readonly guesses: readonly Guess[];
  /** Shown once the record is revealed. */
  readonly record: { readonly answers: RecordedAnswers; readonly band: PlateauBand } | null;
  readonly onGuess: (timeS: number) => void;
}

/** From below any plateau up to boiling water; our choice, no source. */
export const closeUpC = [70, 100] as const;

/** The bare trace of the head, the class's flags on it, and the record behind them once revealed. */
export function BlindStrip(props: BlindStripProps) {
  const { head, endS, shownToS, isCloseUp, guesses, record, onGuess } = props;
  const words = useWords();
  const x = timeAxis(0, endS, say('time in the run'), words.axisTime);
  const [lowC, highC] = isCloseUp ? closeUpC : [10, 105];
  const y: Axis = {
    low: lowC,
    high: highC,
    ticks: niceTicks(lowC, highC, 7).values,
    name: say('head, °C'),
    tickWords: (value) => words.number(value, 0),
  };
  const drawn = useMemo(() => {
    if (head === null || shownToS <= 0) return [];
    const shown: Series = { ...head, length: indexAtTime(head, shownToS) };
    return reduceToWidth(shown, { fromS: 0, toS: endS, columns: 900 });
  }, [head, endS, shownToS]);
  const description = say(
    "The head's temperature up to {shownTo}, with {length} flags set by the class.",
    { shownTo: clockWords(shownToS), length: guesses.length },
  );
  return (
    <PlotPaper x={x} y={y} description={description}>
      {(scale) => (
        <>
          {record && <RecordedLines scale={scale} record={record} />}
          <path
            d={scale.line(drawn.map(({ timeS, value }) => [timeS, value] as const))}
            className="curve"
          />
          <Cover scale={scale} fromS={shownToS} />
          <Flags scale={scale} guesses={guesses} />
          {record && <RecordedNames scale={scale} record={record} />}
          {record === null && <Reach scale={scale} shownToS={shownToS} onGuess={onGuess} />}
        </>
      )}
    </PlotPaper>
  );
}

/** What has not been uncovered yet. */
function Cover({ scale, fromS }: { scale: PlotScale; fromS: number }) {
  const left = scale.xOf(fromS);
  if (scale.right - left < 1) return null;
  return (
    <rect
      x={left}
      y={scale.top}
      width={scale.right - left}
      height={scale.bottom - scale.top}
      fill="url(#texture-gap)"
      fillOpacity={0.45}
    />
  );
}

function Flags({ scale, guesses }: { scale: PlotScale; guesses: readonly Guess[] }) {
  const { xOf, top, bottom, textPx } = scale;
  const [width, height] = [2.7 * textPx, 1.5 * textPx];
  return (
    <g>
      {guesses.map(({ group, kind, timeS }) => {
        const x = xOf(timeS);
        const isHeatOff = kind === 'heat-off';
        // Groups hang at different heights, so that flags close together can still be read.
        const y = top + (0.27 + 1.75 * (groupLetters.indexOf(group) % 4)) * textPx;
        const across = x > scale.right - 1.1 * width ? -width : width;
        return (
          <g key={`${group}-${kind}`} className="flag" data-kind={kind}>
            <path d={`M${x} ${y}V${bottom}`} className="flag-staff" />
            <path d={`M${x} ${y}h${across}v${height}h${-across}z`} className="flag-cloth" />
            <text
              x={x + across / 2}
              y={y + 1.07 * textPx}
              textAnchor="middle"
              className="flag-name"
            >
              {`${group} ${isHeatOff ? signs.heatOff : signs.stage}`}
            </text>
          </g>
        );
      })}
    </g>
  );
}

interface RecordedLinesProps {
  readonly scale: PlotScale;
  readonly record: NonNullable<BlindStripProps['record']>;
}

function RecordedLines({ scale, record: { answers, band } }: RecordedLinesProps) {
  const { xOf, yOf, left, right, top, bottom } = scale;
  const high = yOf(band.limitC);
  return (
    <g>
      <rect
        x={left}
        y={high}
        width={right - left}
        height={Math.max(2, yOf(band.azeotropeC) - high)}
        fill="url(#texture-band)"
      />
      {guessKinds.map((kind) => {
        const answer = answers[kind];
        return answer ? (
          <path key={kind} d={`M${xOf(answer.timeS)} ${top}V${bottom}`} className="recorded-line" />
        ) : null;
      })}
    </g>
  );
}

/** Above the flags, so that no staff runs through the words. */
function RecordedNames({ scale, record: { answers } }: RecordedLinesProps) {
  const { xOf, left, right, bottom, textPx } = scale;
  return (
    <g>
      {guessKinds.map((kind, row) => {
        const answer = answers[kind];
        if (answer === null) return null;
        const x = xOf(answer.timeS);
        const isRight = x > (left + right) / 2;
        return (
          <text
            key={kind}
            x={x + (isRight ? -0.53 : 0.53) * textPx}
            // Each on a line of its own: the two may be close together.
            y={bottom - (0.8 + 1.5 * row) * textPx}
            textAnchor={isRight ? 'end' : 'start'}
            className="plot-name"
          >
            {say('record: {guess}', { guess: inMidSentence(guessNames[kind]) })}
          </text>
        );
      })}
    </g>
  );
}

interface ReachProps {
  readonly scale: PlotScale;
  readonly shownToS: number;
  readonly onGuess: (timeS: number) => void;
}

/** Press or drag on the uncovered trace to set the flag; the slider does the same by keyboard. */
function Reach({ scale, shownToS, onGuess }: ReachProps) {
  const right = scale.xOf(shownToS);
  if (right - scale.left < 1) return null;
  return (
    <PressArea
      edges={{ ...scale, right }}
      onPress={(fromLeftPx) =>
        onGuess(Math.min(shownToS, Math.round(scale.xAt(scale.left + fromLeftPx))))
      }
    />
  );
}
