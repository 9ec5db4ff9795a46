import { useMemo, useState } from 'react';
import { niceTicks, say } from '#shared-core';
import { ChoiceField } from '../design/index.ts';
import { type Axis, PlotPaper, type PlotScale, timeAxis } from '../figures/index.ts';
import type { Film } from '../replay/index.ts';
import { signs, useWords } from '../words/index.ts';
import { type AlignedPoint, alignedTrace, drawnUntilS } from './aligned-trace.ts';
import { letterSide } from './letter-side.ts';
import type { RunFacts } from './run-facts.ts';
import { type TraceLook, traceLooks } from './trace-look.ts';

export interface ComparedRun {
  readonly film: Film;
  readonly facts: RunFacts;
}

type HeadScale = 'celsius' | 'above-azeotrope';

const scaleOptions = [
  { value: 'celsius', label: '°C' },
  { value: 'above-azeotrope', label: say('K above the azeotrope') },
] as const;

/** Before arrival the head is cold, below the paper: a little of it is enough to see it come. */
const beforeS = -120;
/** The paper is never narrower than this [s]. */
const shortestS = 600;

/** The heads of several runs over each other, vapour arrival at zero. */
export function Overlay({ runs }: { readonly runs: readonly ComparedRun[] }) {
  const words = useWords();
  const [headScale, setHeadScale] = useState<HeadScale>('celsius');
  const longestS = Math.max(
    shortestS,
    ...runs.map(({ film, facts }) => film.endS - (facts.arrivedS ?? film.endS)),
  );
  const isAbove = headScale === 'above-azeotrope';
  const traces = useMemo(
    () =>
      runs.map(({ film, facts }): readonly AlignedPoint[] => {
        const head = film.frames[film.frames.length - 1]?.tracks.head?.series;
        if (head === undefined || facts.arrivedS === null) return [];
        const takenOffC = isAbove ? (facts.azeotropeC?.value ?? 0) : 0;
        return alignedTrace(head, facts.arrivedS, { fromS: beforeS, toS: longestS }, takenOffC);
      }),
    [runs, isAbove, longestS],
  );
  const low = isAbove ? -4 : 74;
  const high = highest(traces, low + 8);
  const scaled = traces.map((points) => points.map((point) => within(point, low)));
  const calledS = runs.map(({ facts }) => facts.heatOffCalledS ?? 0);
  const toS = Math.max(shortestS, drawnUntilS(scaled), ...calledS);
  const x = timeAxis(beforeS, toS, say('time from vapour arrival'), words.axisTime);
  const y: Axis = {
    low,
    high,
    ticks: niceTicks(low, high, 8).values,
    name: isAbove ? say('head above the azeotrope, K') : say('head, °C'),
    tickWords: (value) => words.number(value, 0),
  };
  const names = runs.map(({ film }, index) => `${traceLooks[index]?.letter} ${film.identity.name}`);
  return (
    <div className="overlay">
      <ChoiceField
        name={say('Head shown in')}
        options={scaleOptions}
        value={headScale}
        onValue={setHeadScale}
      />
      <PlotPaper
        x={x}
        y={y}
        description={say(
          'The heads of {names}, laid over each other from vapour arrival on; the table below has the figures.',
          { names: names.join(', ') },
        )}
      >
        {(scale) =>
          runs.map(({ film, facts }, index) => {
            const look = traceLooks[index];
            return look ? (
              <Trace
                key={film.identity.runId}
                look={look}
                points={scaled[index] ?? []}
                span={high - low}
                others={scaled.filter((_, other) => other !== index)}
                heatOffS={facts.heatOffCalledS}
                scale={scale}
              />
            ) : null;
          })
        }
      </PlotPaper>
    </div>
  );
}

/** Somewhat above all that is drawn, in whole steps of 2 K. */
function highest(traces: readonly (readonly AlignedPoint[])[], least: number): number {
  const top = traces.flat().reduce((most, [, value]) => Math.max(most, value ?? most), least);
  return 2 * Math.ceil((top + 1) / 2);
}

/** Below the paper nothing is drawn: a cold head is no part of the comparison. */
function within([timeS, value]: AlignedPoint, low: number): AlignedPoint {
  return [timeS, value === null || value < low ? null : value];
}

interface TraceProps {
  readonly look: TraceLook;
  readonly points: readonly AlignedPoint[];
  readonly others: readonly (readonly AlignedPoint[])[];
  /** Of the axis, in its own unit. */
  readonly span: number;
  readonly heatOffS: number | null;
  readonly scale: PlotScale;
}

/** Signs along a line stand this far apart, each line's shifted against the next [s]. */
const signEveryS = 420;
/** The first one waits until the head holds [s]. */
const firstSignS = 180;

function Trace({ look, points, others, span, heatOffS, scale }: TraceProps) {
  const { xOf, yOf, top, bottom, textPx } = scale;
  const place = traceLooks.indexOf(look);
  const shiftS = firstSignS + 105 * place;
  const spots: AlignedPoint[] = [];
  let nextS = shiftS;
  for (const point of points) {
    if (point[0] < nextS || point[1] === null) continue;
    spots.push(point);
    nextS = point[0] + signEveryS;
  }
  const roomAbove = (2.2 * textPx * span) / (bottom - top);
  const isBelow = spots[0] !== undefined && letterSide(spots[0], others, roomAbove) === 'below';
  return (
    <g className="trace" style={{ color: look.colour }}>
      <path d={scale.line(points)} className="trace-line" strokeDasharray={look.dashes} />
      {spots.map(([timeS, value]) => (
        <text
          key={timeS}
          x={scale.xOf(timeS)}
          y={scale.yOf(value ?? 0)}
          dy="0.35em"
          textAnchor="middle"
          className="trace-sign"
        >
          {look.sign}
        </text>
      ))}
      {spots[0] && (
        <text
          x={xOf(spots[0][0]) + 0.8 * textPx}
          y={yOf(spots[0][1] ?? 0) + (isBelow ? 1.3 : -0.67) * textPx}
          className="plot-name"
        >
          {look.letter}
        </text>
      )}
      {heatOffS !== null && (
        <g>
          <path
            d={`M${xOf(heatOffS)} ${top + (1.47 + 1.33 * place) * textPx}V${bottom}`}
            className="trace-mark"
            strokeDasharray={look.dashes}
          />
          <text
            x={xOf(heatOffS)}
            y={top + (1.07 + 1.33 * place) * textPx}
            textAnchor="middle"
            className="plot-name"
          >
            {`${look.letter} ${signs.prompt}`}
          </text>
        </g>
      )}
    </g>
  );
}
