import { niceTicks, type RunPlan, say } from '#shared-core';
import { type Axis, PlotPaper, type PlotScale, timeAxis } from '../figures/index.ts';
import { useWords } from '../words/index.ts';

interface CourseFigureProps {
  readonly plan: RunPlan;
  readonly description: string;
}

/** The head's temperature as expected before any heat: the middle run, and where 90 % of them lie. */
export function CourseFigure({ plan, description }: CourseFigureProps) {
  const words = useWords();
  const endS = plan.course.at(-1)?.timeS ?? 3600;
  const x = timeAxis(0, endS, say('time since heat on'), words.axisTime);
  const y: Axis = {
    low: 20,
    high: 100,
    ticks: niceTicks(20, 100, 6).values,
    name: say('still head, °C'),
    tickWords: (value) => words.number(value, 0),
  };
  return (
    <PlotPaper x={x} y={y} description={description}>
      {(scale) => (
        <g>
          <PlateauBand plan={plan} scale={scale} />
          <path d={intervalPath(plan, scale)} className="estimate-region" />
          <path
            d={scale.line(
              plan.course.map(({ timeS, headTemperatureC }) => [timeS, headTemperatureC.value]),
            )}
            className="curve"
          />
          {plan.mainFraction && (
            <HeatOff atS={plan.mainFraction.toS.value} plan={plan} scale={scale} />
          )}
        </g>
      )}
    </PlotPaper>
  );
}

interface HeatOffProps {
  readonly atS: number;
  readonly plan: RunPlan;
  readonly scale: PlotScale;
}

/** Named below the band, where nothing is drawn: above it the head climbs on. */
function HeatOff({ atS, plan, scale }: HeatOffProps) {
  const x = scale.xOf(atS);
  const nameY = scale.yOf(plan.azeotropeC.low) + 44;
  return (
    <>
      <path
        d={`M${x} ${scale.yOf(plan.limitTemperatureC.value)}V${nameY - 18}`}
        className="cursor-line"
      />
      <text x={x} y={nameY} textAnchor="middle" className="plot-name">
        {say('heat off about here')}
      </text>
    </>
  );
}

function PlateauBand({ plan, scale }: { readonly plan: RunPlan; readonly scale: PlotScale }) {
  const top = scale.yOf(plan.limitTemperatureC.value);
  const bottom = scale.yOf(plan.azeotropeC.value);
  return (
    <rect
      x={scale.left}
      y={top}
      width={scale.right - scale.left}
      height={Math.max(2, bottom - top)}
      fill="url(#texture-band)"
    />
  );
}

function intervalPath({ course }: RunPlan, scale: PlotScale): string {
  const upper = course.map((at) => [at.timeS, at.headTemperatureC.high] as const);
  const lower = course.map((at) => [at.timeS, at.headTemperatureC.low] as const);
  return scale.between(upper, lower);
}
