import { memo } from 'react';
import { CartesianGrid, ComposedChart, XAxis, YAxis } from 'recharts';
import { niceTicks, timeTicks } from '#shared-core';
import { useWords } from '../words/index.ts';
import { MovingLayers } from './moving-layers.tsx';
import { PlateauLayer } from './plateau-layer.tsx';
import { useStripMeasures } from './strip-text.ts';

/** Plain numbers only, so that the frame is drawn anew only when one of them changes. */
interface StripFrameProps {
  readonly width: number;
  readonly height: number;
  readonly fromS: number;
  readonly toS: number;
  readonly lowC: number;
  readonly highC: number;
  readonly azeotropeC: number | null;
  readonly limitC: number | null;
}

/** No rows of data: the frame gives the axes and their scales, the layers draw by them. */
const noRows: never[] = [];

/** Axes, grid and plateau band. What moves is drawn by {@link MovingLayers} in its coordinates. */
export const StripFrame = memo(function StripFrame(props: StripFrameProps) {
  const { width, height, fromS, toS, lowC, highC, azeotropeC, limitC } = props;
  const words = useWords();
  const { textPx, axisWidthPx, axisHeightPx, footPx } = useStripMeasures();
  const decimals = highC - lowC < 5 ? 1 : 0;
  return (
    <ComposedChart
      width={width}
      height={height}
      data={noRows}
      margin={{ top: textPx * 1.6, right: textPx * 1.8, bottom: 4, left: 0 }}
      accessibilityLayer={false}
      aria-hidden="true"
    >
      <CartesianGrid vertical={false} className="strip-grid" />
      {azeotropeC !== null && limitC !== null && (
        <PlateauLayer azeotropeC={azeotropeC} limitC={limitC} />
      )}
      <XAxis
        dataKey="timeS"
        type="number"
        domain={[fromS, toS]}
        allowDataOverflow
        ticks={timeTicks(fromS, toS, 1 + Math.max(3, Math.floor(width / (textPx * 7.3))))}
        tickFormatter={words.axisTime}
        height={axisHeightPx}
        tickMargin={6}
      />
      <YAxis
        type="number"
        domain={[lowC, highC]}
        allowDataOverflow
        ticks={niceTicks(lowC, highC, 1 + Math.max(3, Math.floor(height / (textPx * 4)))).values}
        tickFormatter={(value: number) => words.quantity(value, decimals, '°C')}
        width={axisWidthPx}
        padding={{ bottom: footPx }}
      />
      <MovingLayers />
    </ComposedChart>
  );
});
