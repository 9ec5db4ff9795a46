import { useId, useMemo } from 'react';
import { say } from '#shared-core';
import { useWords } from '../words/index.ts';
import { type CandidateCurve, candidateCurves } from './candidate-curves.ts';
import { type ImportDraft, withColumn } from './import-draft.ts';

interface HeadChoiceProps {
  readonly text: string;
  readonly draft: ImportDraft;
  readonly onDraft: (draft: ImportDraft) => void;
}

const width = 480;
const height = 150;
/** One line each, told apart without colour. */
const dashes = [undefined, '8 4', '2 3', '10 3 2 3'];

/** Asks which of several thermometers hung in the still head, over their curves. */
export function HeadChoice({ text, draft, onDraft }: HeadChoiceProps) {
  const words = useWords();
  const name = useId();
  const curves = useMemo(() => candidateCurves(text, draft), [text, draft]);
  if (curves.length < 2) return null;
  const all = curves.flatMap(({ points }) => points);
  const range = (values: readonly number[]) => [
    values.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY),
    values.reduce((high, value) => Math.max(high, value), Number.NEGATIVE_INFINITY),
  ];
  const [fromS = 0, toS = 1] = range(all.map(({ timeS }) => timeS));
  const [lowC = 0, highC = 1] = range(all.map(({ temperatureC }) => temperatureC));
  const place = ({ timeS, temperatureC }: CandidateCurve['points'][number]) => {
    const x = (width * (timeS - fromS)) / Math.max(1e-9, toS - fromS);
    const y = height * (1 - (temperatureC - lowC) / Math.max(1e-9, highC - lowC));
    return `${x.toFixed(1)},${y.toFixed(1)}`;
  };
  return (
    <fieldset className="head-choice">
      <legend>{say('Which thermometer hung in the still head?')}</legend>
      <p className="small">
        {say(
          'The pot warms first and stays the hotter one; the head stays cool until vapour reaches it, then jumps.',
        )}
      </p>
      <svg
        viewBox={`-4 -4 ${width + 8} ${height + 8}`}
        role="img"
        aria-label={curves.map((curve) => `${curve.title}: ${spanWords(curve)}`).join('; ')}
      >
        {curves.map(({ column, points }, index) => (
          <polyline
            key={column}
            points={points.map(place).join(' ')}
            fill="none"
            stroke="currentColor"
            strokeWidth={2}
            strokeDasharray={dashes[index % dashes.length]}
          />
        ))}
      </svg>
      <p className="small soft number">
        {say('{from} to {to}, {low} to {high}', {
          from: words.clock(fromS),
          to: words.clock(toS),
          low: words.quantity(lowC, 1, '°C'),
          high: words.quantity(highC, 1, '°C'),
        })}
      </p>
      {curves.map((curve, index) => (
        <label key={curve.column} className="head-candidate">
          <input
            type="radio"
            name={name}
            checked={draft.columns[curve.column]?.holds === 'head'}
            onChange={() => onDraft(withHead(draft, curve.column))}
          />
          <svg viewBox="0 0 40 8" width={40} height={8} aria-hidden="true">
            <line
              x1={0}
              y1={4}
              x2={40}
              y2={4}
              stroke="currentColor"
              strokeWidth={2}
              strokeDasharray={dashes[index % dashes.length]}
            />
          </svg>
          <span>
            <strong>{curve.title}</strong>, {spanWords(curve)}
          </span>
        </label>
      ))}
    </fieldset>
  );

  function spanWords({ points }: CandidateCurve): string {
    const [low = 0, high = 0] = range(points.map(({ temperatureC }) => temperatureC));
    return say('from {temperature}, between {low} and {high}', {
      temperature: words.quantity(points[0]?.temperatureC ?? 0, 1, '°C'),
      low: words.quantity(low, 1, '°C'),
      high: words.quantity(high, 1, '°C'),
    });
  }
}

/** Whoever was taken for the head before is an unplaced thermometer again. */
function withHead(draft: ImportDraft, column: number): ImportDraft {
  const unplaced = draft.headDoubt
    .filter((other) => other !== column && draft.columns[other]?.holds === 'head')
    .reduce(
      (changed, other) => withColumn(changed, other, { holds: `thermometer-${other + 1}` }),
      draft,
    );
  return withColumn(unplaced, column, { holds: 'head' });
}
