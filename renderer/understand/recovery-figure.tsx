import { niceTicks, type RunSettings } from '#shared-core';
import type { PlotScale } from '../figures/index.ts';
import { type Axis, FigureFrame, NumbersTable, PlotPaper } from '../figures/index.ts';
import { useWords } from '../words/index.ts';
import type { StillMoment } from './still-moment.ts';

interface RecoveryFigureProps {
  readonly moment: StillMoment;
  readonly settings: RunSettings;
}

/** Mean strength of what was collected, against the share of the ethanol it holds. */
export function RecoveryFigure({ moment, settings }: RecoveryFigureProps) {
  const words = useWords();
  const points = moment.recovery;
  const now = points[points.length - 1] ?? null;
  const weakest = points.reduce((low, point) => Math.min(low, point.meanStrengthAbv.low), 84);
  const lowAbv = Math.floor(Math.min(weakest, 84) / 10) * 10;
  const x: Axis = {
    low: 0,
    high: 1,
    ticks: [0, 0.2, 0.4, 0.6, 0.8, 1],
    name: 'share of the charge’s ethanol collected, %',
    tickWords: (value) => words.number(100 * value, 0),
  };
  const y: Axis = {
    low: lowAbv,
    high: 100,
    ticks: niceTicks(lowAbv, 100, 6).values,
    name: 'mean strength, % vol',
    tickWords: (value) => words.number(value, 0),
  };
  const percent = now && {
    low: 100 * now.recovery.low,
    high: Math.min(100, 100 * now.recovery.high),
  };
  const sentence =
    now && percent
      ? `Up to the last booking ${words.range(percent, 0, '%')} of the charge’s ethanol has come over, at ${words.range(now.meanStrengthAbv, 0, '% vol')} on average: going on adds ethanol and takes away strength.`
      : 'Nothing is booked yet: book a volume in the receiver, and this curve shows how much of the ethanol has come over, and how strong it is.';
  const leastMeanAbv =
    settings.stop.kind === 'purity-against-recovery' ? settings.stop.leastMeanStrengthAbv : null;
  return (
    <FigureFrame
      title="Strength against recovery so far"
      sentence={sentence}
      drawing={
        <PlotPaper x={x} y={y} description={sentence}>
          {(scale) => (
            <>
              {leastMeanAbv !== null && leastMeanAbv > lowAbv && (
                <LeastMean
                  scale={scale}
                  abv={leastMeanAbv}
                  name={`stop at ${words.number(leastMeanAbv, 0)} % vol on average`}
                />
              )}
              {now && <RecoveryCurve moment={moment} scale={scale} />}
            </>
          )}
        </PlotPaper>
      }
    >
      <NumbersTable
        title="Collected so far"
        rows={[
          ['Booked', now ? words.quantity(now.volumeMl, 1, 'mL') : 'nothing'],
          ['Mean strength', now ? words.range(now.meanStrengthAbv, 0, '% vol') : 'not known'],
          ['Share of the ethanol', percent ? words.range(percent, 0, '%') : 'not known'],
          [
            'Drip rate',
            moment.dripRateMlPerMin
              ? words.range(moment.dripRateMlPerMin, 1, 'mL/min')
              : 'not known',
          ],
        ]}
      />
    </FigureFrame>
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

function RecoveryCurve({ moment, scale }: { moment: StillMoment; scale: PlotScale }) {
  const points = moment.recovery;
  const last = points[points.length - 1];
  const upper = points.map((at) => [at.recovery.value, at.meanStrengthAbv.high] as const);
  const lower = points.map((at) => [at.recovery.value, at.meanStrengthAbv.low] as const);
  return (
    <g>
      <path d={scale.between(upper, lower)} className="estimate-region" />
      <path
        d={scale.line(points.map((at) => [at.recovery.value, at.meanStrengthAbv.value] as const))}
        className="staircase"
      />
      {last && (
        <>
          <path
            d={`M${scale.xOf(last.recovery.low)} ${scale.yOf(last.meanStrengthAbv.value)}H${scale.xOf(last.recovery.high)}`}
            className="estimate-bar"
          />
          <circle
            cx={scale.xOf(last.recovery.value)}
            cy={scale.yOf(last.meanStrengthAbv.value)}
            r={0.43 * scale.textPx}
            className="estimate-sign"
          />
        </>
      )}
    </g>
  );
}
