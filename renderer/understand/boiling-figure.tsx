import { useMemo } from 'react';
import {
  azeotrope,
  boilingDiagram,
  moleFractionFromStrength,
  niceTicks,
  type StillMoment,
  say,
} from '#shared-core';
import type { PlotScale } from '../figures/index.ts';
import { type Axis, FigureFrame, NumbersTable, PlotPaper, percentAxis } from '../figures/index.ts';
import { useWords } from '../words/index.ts';
import { boilingSentence, potBasisWords } from './boiling-words.ts';
import { IntervalCross } from './interval-cross.tsx';

const strengthTicks = [20, 50, 80, 90, 96];

/** The T–x–y diagram at the local air pressure, with pot and head as far as they are known. */
export function BoilingFigure({ moment }: { readonly moment: StillMoment }) {
  const words = useWords();
  const { pressureKPa, pot, vapour, headC } = moment;
  const roundedKPa = Math.round(pressureKPa * 10) / 10;
  const diagram = useMemo(() => boilingDiagram(roundedKPa, 120), [roundedKPa]);
  const lowest = azeotrope(pressureKPa);
  const highestC = diagram[0]?.temperatureC ?? 100;
  const lowC = Math.floor(lowest.temperatureC - 2);
  const highC = Math.ceil(highestC + 1);
  const x = percentAxis(say('ethanol in liquid or vapour, mol %'), words.number);
  const y: Axis = {
    low: lowC,
    high: highC,
    ticks: niceTicks(lowC, highC, 7).values,
    name: '°C',
    tickWords: (value) => words.number(value, 0),
  };
  const above: Axis = {
    ...x,
    ticks: strengthTicks.map(moleFractionFromStrength),
    name: '% vol',
    tickWords: (value) =>
      words.number(strengthTicks.find((abv) => moleFractionFromStrength(abv) === value) ?? 0, 0),
  };
  const sentence = boilingSentence(moment, words);
  return (
    <FigureFrame
      title={say('Boiling at {pressure}', { pressure: words.quantity(pressureKPa, 1, 'kPa') })}
      sentence={sentence}
      drawing={
        <PlotPaper x={x} y={y} above={above} description={sentence}>
          {(scale) => (
            <>
              <BoilingCurves diagram={diagram} scale={scale} />
              <Azeotrope scale={scale} x={lowest.ethanolMoleFraction} y={lowest.temperatureC} />
              {pot && (
                <IntervalCross
                  scale={scale}
                  x={pot.ethanolMoleFraction}
                  y={pot.boilsAtC}
                  shape="pot"
                  name={say('pot')}
                />
              )}
              {vapour && headC && (
                <IntervalCross
                  scale={scale}
                  x={vapour.ethanolMoleFraction}
                  y={headC}
                  shape="head"
                  name={say('head')}
                />
              )}
            </>
          )}
        </PlotPaper>
      }
    >
      <NumbersTable
        title={say('Pot, head and azeotrope')}
        rows={[
          [say('Air pressure'), words.quantity(pressureKPa, 1, 'kPa')],
          [
            say('Azeotrope'),
            `${words.quantity(lowest.temperatureC, 1, '°C')}, ${words.quantity(100 * lowest.ethanolMoleFraction, 0, 'mol %')}`,
          ],
          [say('Head'), headC ? words.range(headC, 1, '°C') : say('no reading')],
          [
            say('Vapour at the head'),
            vapour ? words.range(vapour.strengthAbv, 0, '% vol') : say('no vapour at the bulb'),
          ],
          [
            say('Pot'),
            pot
              ? `${words.range(pot.strengthAbv, 1, '% vol')}, ${potBasisWords[pot.basis]}`
              : say('not known'),
          ],
          [say('Pot boils at'), pot ? words.range(pot.boilsAtC, 1, '°C') : say('not known')],
        ]}
      />
    </FigureFrame>
  );
}

interface BoilingCurvesProps {
  readonly diagram: ReturnType<typeof boilingDiagram>;
  readonly scale: PlotScale;
}

function BoilingCurves({ diagram, scale }: BoilingCurvesProps) {
  const bubble = diagram.map((at) => [at.liquidMoleFraction, at.temperatureC] as const);
  const dew = diagram.map((at) => [at.vapourMoleFraction, at.temperatureC] as const);
  const named = dew.find(([moleFraction]) => moleFraction > 0.5) ?? [0.5, 90];
  return (
    <g>
      <path d={scale.between(bubble, dew)} fill="url(#texture-band)" />
      <path d={scale.line(bubble)} className="curve" />
      <path d={scale.line(dew)} className="curve" data-dashes="dew" />
      <CurveName scale={scale} at={named} name={say('vapour (dew curve)')} side="above" />
      <CurveName scale={scale} at={named} name={say('liquid (bubble curve)')} side="below" />
    </g>
  );
}

interface CurveNameProps {
  readonly scale: PlotScale;
  readonly at: CurvePoint;
  readonly name: string;
  readonly side: 'above' | 'below';
}

/** Below, a name starts under the steep part of the curve, where neither pot nor head is in its way. */
function CurveName({ scale, at: [x, y], name, side }: CurveNameProps) {
  const { textPx } = scale;
  const isAbove = side === 'above';
  return (
    <text
      x={isAbove ? scale.xOf(x) + 0.8 * textPx : scale.left + 0.67 * textPx}
      y={isAbove ? scale.yOf(y) - 0.53 * textPx : scale.bottom - 0.93 * textPx}
      textAnchor="start"
      className="plot-name"
    >
      {name}
    </text>
  );
}

type CurvePoint = readonly [moleFraction: number, temperatureC: number];

function Azeotrope({ scale, x, y }: { scale: PlotScale; x: number; y: number }) {
  return (
    <g>
      <circle cx={scale.xOf(x)} cy={scale.yOf(y)} r={0.3 * scale.textPx} className="azeotrope" />
      <text
        x={scale.xOf(x)}
        y={scale.yOf(y) + 1.4 * scale.textPx}
        textAnchor="middle"
        className="plot-name"
      >
        {say('azeotrope')}
      </text>
    </g>
  );
}
