import { memo } from 'react';
import { niceTicks } from '#shared-core';
import { PlotAxes, timeAxis } from '../figures/index.ts';
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

/** Axes, grid and plateau band. What moves is drawn by {@link MovingLayers} in its coordinates. */
export const StripFrame = memo(function StripFrame(props: StripFrameProps) {
  const { width, height, fromS, toS, lowC, highC, azeotropeC, limitC } = props;
  const words = useWords();
  const { textPx, axisWidthPx, axisHeightPx, footPx } = useStripMeasures();
  const decimals = highC - lowC < 5 ? 1 : 0;
  const mostAcross = 1 + Math.max(3, Math.floor(width / (textPx * 7.3)));
  const mostUp = 1 + Math.max(3, Math.floor(height / (textPx * 4)));
  return (
    <PlotAxes
      {...{ width, height, textPx, footPx }}
      x={timeAxis(fromS, toS, '', words.axisTime, mostAcross)}
      y={{
        low: lowC,
        high: highC,
        ticks: niceTicks(lowC, highC, mostUp).values,
        name: '',
        tickWords: (value) => words.quantity(value, decimals, '°C'),
      }}
      room={{
        left: axisWidthPx,
        right: textPx * 1.8,
        top: textPx * 1.6,
        bottom: axisHeightPx + 4,
      }}
      hasUprightGrid={false}
      description={null}
    >
      {azeotropeC !== null && limitC !== null && (
        <PlateauLayer azeotropeC={azeotropeC} limitC={limitC} />
      )}
      <MovingLayers />
    </PlotAxes>
  );
});
