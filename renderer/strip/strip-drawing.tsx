import type { ReactNode } from 'react';
import { CartesianGrid, ComposedChart, Line, XAxis, YAxis } from 'recharts';
import type { DrawnPoint, Mark } from '#shared-core';
import type { RunView } from '../stores/index.ts';
import { useWords } from '../words/use-words.ts';
import { ForecastFan } from './forecast-fan.tsx';
import { GapsLayer } from './gaps-layer.tsx';
import { MarksLayer } from './marks-layer.tsx';
import { NowLayer } from './now-layer.tsx';
import { PlateauLayer } from './plateau-layer.tsx';
import { StageSegments } from './stage-segments.tsx';
import { useStripMeasures } from './strip-text.ts';
import { type StripHeight, temperatureRange, temperatureTicks } from './temperature-range.ts';
import { type TimeRange, timeTicks } from './time-range.ts';
import type { BoxSize } from './use-box-size.ts';

interface StripDrawingProps {
  readonly view: RunView;
  readonly size: BoxSize;
  readonly range: TimeRange;
  readonly height: StripHeight;
  readonly drawn: readonly DrawnPoint[];
  readonly marks: readonly Mark[];
  readonly nowS: number;
  readonly headC: number | null;
  readonly children?: ReactNode;
}

export function StripDrawing(props: StripDrawingProps) {
  const { view, size, range, height, drawn, marks, nowS, headC } = props;
  const words = useWords();
  const { textPx, axisWidthPx, axisHeightPx, footPx } = useStripMeasures();
  const { snapshot } = view;
  const band = snapshot?.plateau ?? null;
  const temperatures = temperatureRange(height, band, drawn);
  const { lowC, highC } = temperatures;
  const end = snapshot?.forecast?.mainFractionEndS ?? null;
  const decimals = height === 'plateau' && highC - lowC < 5 ? 1 : 0;
  return (
    <ComposedChart
      width={size.width}
      height={size.height}
      data={drawn as DrawnPoint[]}
      margin={{ top: textPx * 1.6, right: textPx * 1.8, bottom: 4, left: 0 }}
      accessibilityLayer={false}
      aria-hidden="true"
    >
      <CartesianGrid vertical={false} className="strip-grid" />
      {band && (
        <PlateauLayer
          band={band}
          azeotropeLabel={`azeotrope ${words.number(band.azeotropeC, 1)} °C`}
          limitLabel={`${words.number(band.leastStrengthAbv, 0)} % vol at ${words.number(band.limitC, 1)} °C`}
        />
      )}
      <XAxis
        dataKey="timeS"
        type="number"
        domain={[range.fromS, range.toS]}
        allowDataOverflow
        ticks={timeTicks(range, Math.max(3, Math.floor(size.width / (textPx * 7.3))))}
        tickFormatter={words.axisTime}
        height={axisHeightPx}
        tickMargin={6}
      />
      <YAxis
        type="number"
        domain={[lowC, highC]}
        allowDataOverflow
        ticks={temperatureTicks(temperatures, Math.max(3, Math.floor(size.height / (textPx * 4))))}
        tickFormatter={(value: number) => `${words.number(value, decimals)} °C`}
        width={axisWidthPx}
        padding={{ bottom: footPx }}
      />
      <MarksLayer marks={marks} />
      {end && headC !== null && band && view.endedS === null && (
        <ForecastFan
          fromS={nowS}
          fromC={headC}
          endS={end}
          limitC={band.limitC}
          label="limit expected"
        />
      )}
      <Line
        dataKey="value"
        type="linear"
        dot={false}
        activeDot={false}
        isAnimationActive={false}
        connectNulls={false}
        className="strip-trace"
      />
      <GapsLayer gaps={view.gaps} nowS={nowS} />
      <StageSegments stages={view.stages} nowS={nowS} height={footPx} />
      <NowLayer timeS={nowS} headC={headC} />
      {props.children}
    </ComposedChart>
  );
}
