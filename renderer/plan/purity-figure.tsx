import { niceTicks, type RunPlan } from '#shared-core';
import { type Axis, PlotPaper } from '../figures/index.ts';
import { useWords } from '../words/index.ts';

interface PurityFigureProps {
  readonly plan: RunPlan;
  /** Mean strength at which the person wants to stop; null when the vapour's strength decides. */
  readonly leastMeanAbv: number | null;
  readonly description: string;
}

/** What each further share of the ethanol costs in strength. */
export function PurityFigure({ plan, leastMeanAbv, description }: PurityFigureProps) {
  const words = useWords();
  const points = plan.purityAgainstRecovery;
  const least = points.reduce((low, { strengthAbv }) => Math.min(low, strengthAbv.low), 80);
  const lowAbv = Math.floor(least / 10) * 10;
  const x: Axis = {
    low: 0,
    high: 1,
    ticks: [0, 0.25, 0.5, 0.75, 1],
    name: 'share of the ethanol collected, %',
    tickWords: (value) => words.number(100 * value, 0),
  };
  const y: Axis = {
    low: lowAbv,
    high: 100,
    ticks: niceTicks(lowAbv, 100, 6).values,
    name: 'mean strength, % vol',
    tickWords: (value) => words.number(value, 0),
  };
  const upper = points.map((at) => [at.recoveredFraction, at.strengthAbv.high] as const);
  const lower = points.map((at) => [at.recoveredFraction, at.strengthAbv.low] as const);
  return (
    <PlotPaper x={x} y={y} description={description}>
      {(scale) => (
        <g>
          <path d={scale.between(upper, lower)} className="estimate-region" />
          <path
            d={scale.line(
              points.map((at) => [at.recoveredFraction, at.strengthAbv.value] as const),
            )}
            className="curve"
          />
          {leastMeanAbv !== null && leastMeanAbv > lowAbv && (
            <>
              <path
                d={`M${scale.left} ${scale.yOf(leastMeanAbv)}H${scale.right}`}
                className="curve"
                data-dashes="operating"
              />
              <text
                x={scale.right - 4}
                y={scale.yOf(leastMeanAbv) - 8}
                textAnchor="end"
                className="plot-name"
              >
                stop here
              </text>
            </>
          )}
        </g>
      )}
    </PlotPaper>
  );
}
