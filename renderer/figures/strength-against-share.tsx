import { type Estimate, niceTicks, say } from '#shared-core';
import { useWords } from '../words/index.ts';
import { type Axis, percentAxis } from './axis.ts';
import { PlotPaper } from './plot-paper.tsx';
import type { PlotScale } from './plot-scale.ts';

/** How strong all is on average that holds this share of the charge's ethanol. */
export interface SharePoint {
  /** A fraction, 0 … 1. */
  readonly share: number;
  readonly strengthAbv: Estimate;
}

interface StrengthAgainstShareProps {
  readonly points: readonly SharePoint[];
  /** Mean strength at which the person wants to stop; null when the vapour's strength decides. */
  readonly leastMeanAbv: number | null;
  /** How far the run may have come by the last point; null for a plan. */
  readonly reached: Estimate | null;
  readonly description: string;
}

/** The paper reaches down to here even where nothing is so weak [% vol]. */
const usualLowAbv = 80;

/** What each further share of the ethanol costs in strength: as planned, or as collected so far. */
export function StrengthAgainstShare(props: StrengthAgainstShareProps) {
  const { points, leastMeanAbv, reached, description } = props;
  const words = useWords();
  const weakest = points.reduce((low, point) => Math.min(low, point.strengthAbv.low), usualLowAbv);
  const lowAbv = Math.floor(weakest / 10) * 10;
  const x = percentAxis(say('share of the charge’s ethanol collected, %'), words.number);
  const y: Axis = {
    low: lowAbv,
    high: 100,
    ticks: niceTicks(lowAbv, 100, 6).values,
    name: say('mean strength, % vol'),
    tickWords: (value) => words.number(value, 0),
  };
  const line = (end: keyof Estimate) =>
    points.map(({ share, strengthAbv }) => [share, strengthAbv[end]] as const);
  const lastAbv = points.at(-1)?.strengthAbv.value;
  return (
    <PlotPaper x={x} y={y} description={description}>
      {(scale) => (
        <g>
          {leastMeanAbv !== null && leastMeanAbv > lowAbv && (
            <LeastMean
              scale={scale}
              abv={leastMeanAbv}
              name={say('stop at {leastMean} % vol on average', {
                leastMean: words.number(leastMeanAbv, 0),
              })}
            />
          )}
          {points.length > 0 && (
            <path d={scale.between(line('high'), line('low'))} className="estimate-region" />
          )}
          <path d={scale.line(line('value'))} className="curve" />
          {reached && lastAbv !== undefined && (
            <LastPoint scale={scale} reached={reached} abv={lastAbv} />
          )}
        </g>
      )}
    </PlotPaper>
  );
}

function LeastMean({ scale, abv, name }: { scale: PlotScale; abv: number; name: string }) {
  const y = scale.yOf(abv);
  return (
    <g>
      <path d={`M${scale.left} ${y}H${scale.right}`} className="curve" data-dashes="operating" />
      <text x={scale.right - 4} y={y + 1.2 * scale.textPx} textAnchor="end" className="plot-name">
        {name}
      </text>
    </g>
  );
}

function LastPoint(props: { scale: PlotScale; reached: Estimate; abv: number }) {
  const { scale, reached, abv } = props;
  const { xOf, yOf, textPx } = scale;
  const y = yOf(abv);
  return (
    <>
      <path d={`M${xOf(reached.low)} ${y}H${xOf(reached.high)}`} className="estimate-bar" />
      <circle cx={xOf(reached.value)} cy={y} r={0.43 * textPx} className="estimate-sign" />
    </>
  );
}
