import { useMemo, useState } from 'react';
import {
  type Estimate,
  equilibriumCurve,
  plateDiagram,
  plateLines,
  type StillMoment,
  say,
} from '#shared-core';
import { ChoiceField } from '../design/index.ts';
import type { PlotScale } from '../figures/index.ts';
import {
  DrawnShapes,
  FigureFrame,
  NumbersTable,
  PlotPaper,
  percentAxis,
} from '../figures/index.ts';
import { useWords } from '../words/index.ts';
import { platesSentence, stageWords } from './plates-words.ts';

const triedRatios = { '1': 1, '3': 3, '10': 10, total: Number.POSITIVE_INFINITY } as const;
type Tried = keyof typeof triedRatios;
type RefluxChoice = 'present' | Tried;

const usualChoice: Tried = '3';

/** McCabe–Thiele steps between pot and head for the present reflux, or one to try. */
export function PlatesFigure({ moment }: { readonly moment: StillMoment }) {
  const words = useWords();
  const { vapour, pot, reflux, pressureKPa } = moment;
  const [chosen, setChosen] = useState<RefluxChoice>('present');
  const roundedKPa = Math.round(pressureKPa * 10) / 10;
  const equilibrium = useMemo(() => equilibriumCurve(roundedKPa), [roundedKPa]);
  const choice = chosen === 'present' && reflux === null ? usualChoice : chosen;
  const drawnReflux: Estimate =
    choice === 'present' && reflux
      ? reflux.refluxRatio
      : exactly(triedRatios[choice === 'present' ? usualChoice : choice]);
  const diagram =
    vapour && pot
      ? plateDiagram({
          equilibrium,
          head: vapour.ethanolMoleFraction,
          pot: pot.ethanolMoleFraction,
          refluxRatio: drawnReflux.value,
          refluxRange: drawnReflux,
        })
      : null;
  const sentence = diagram ? platesSentence(diagram, drawnReflux, words) : missingSentence(moment);
  const options = [
    ...(reflux ? [{ value: 'present' as const, label: say('As estimated') }] : []),
    ...(['1', '3', '10'] as const).map((value) => ({ value, label: value })),
    { value: 'total' as const, label: say('All back') },
  ];
  return (
    <FigureFrame
      title={say('Plates between pot and head')}
      sentence={sentence}
      drawing={
        <PlotPaper
          x={percentAxis(say('ethanol in the liquid, mol %'), words.number)}
          y={percentAxis(say('ethanol in the vapour, mol %'), words.number)}
          description={sentence}
        >
          {(scale) => (
            <>
              {diagram && <Ends moment={moment} scale={scale} />}
              <DrawnShapes
                shapes={plateLines(
                  (x, y) => [scale.xOf(x), scale.yOf(y)],
                  equilibrium,
                  diagram,
                  looks,
                )}
              />
              <text
                x={scale.xOf(0.32)}
                y={scale.yOf(equilibrium(0.32)) - 0.8 * scale.textPx}
                textAnchor="middle"
                className="plot-name"
              >
                {say('equilibrium')}
              </text>
            </>
          )}
        </PlotPaper>
      }
    >
      <ChoiceField
        name={say('Liquid going back per distillate')}
        options={options}
        value={choice}
        onValue={setChosen}
      />
      {!reflux && vapour && (
        <p className="small soft">
          {say(
            'The present reflux is not known: it takes booked volumes, and the column’s heat loss or the heater’s power in Prepare.',
          )}
        </p>
      )}
      <NumbersTable
        title={say('Plates and reflux')}
        rows={[
          [
            say('Present reflux ratio'),
            reflux ? words.range(reflux.refluxRatio, 1, 'mol/mol') : say('not known'),
          ],
          [
            say('Drawn for'),
            Number.isFinite(drawnReflux.value)
              ? words.range(drawnReflux, 1, 'mol/mol')
              : say('all going back'),
          ],
          [
            say('Least reflux that would do'),
            diagram?.minimumReflux != null
              ? words.quantity(diagram.minimumReflux, 1, 'mol/mol')
              : say('none'),
          ],
          [
            say('Theoretical plates, pot counted'),
            (diagram && stageWords(diagram.stages)) ?? say('none would do'),
          ],
        ]}
      />
    </FigureFrame>
  );
}

function exactly(value: number): Estimate {
  return { value, low: value, high: value };
}

function missingSentence({ vapour, pot }: StillMoment): string {
  if (vapour === null) return say('The steps are drawn once vapour bathes the bulb.');
  if (pot === null)
    return say('The steps need the pot’s strength: book a volume, or put a probe in the pot.');
  return say('The vapour at the head is no richer than the pot: there is nothing to step off.');
}

/** The theme's colours; the width of lines is what the window's other curves have. */
const line = (colour: string) => ({ colour, widthPt: 2.5 });
const looks = {
  diagonal: { colour: 'var(--rule-strong)', widthPt: 1.5 },
  equilibrium: line('var(--trace)'),
  operating: { ...line('var(--fan)'), dash: [10, 4, 2, 4] },
  steps: line('var(--trace-second)'),
};

interface EndsProps {
  readonly moment: StillMoment;
  readonly scale: PlotScale;
}

/** Where pot and head may lie. */
function Ends({ moment: { pot, vapour }, scale }: EndsProps) {
  const { xOf, top, bottom, textPx } = scale;
  const ends = [
    { place: 'pot', name: say('pot'), interval: pot?.ethanolMoleFraction },
    { place: 'head', name: say('head'), interval: vapour?.ethanolMoleFraction },
  ];
  return (
    <g>
      {ends.map(({ place, name, interval }) =>
        interval ? (
          <g key={place}>
            <rect
              x={xOf(interval.low)}
              y={top}
              width={Math.max(2, xOf(interval.high) - xOf(interval.low))}
              height={bottom - top}
              className="estimate-region"
            />
            <text
              x={xOf(interval.value)}
              y={bottom - 0.53 * textPx}
              textAnchor={place === 'pot' ? 'start' : 'end'}
              dx={(place === 'pot' ? 0.53 : -0.53) * textPx}
              className="plot-name"
            >
              {name}
            </text>
          </g>
        ) : null,
      )}
    </g>
  );
}
