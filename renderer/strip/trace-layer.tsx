import { useId } from 'react';
import type { DrawnPoint } from '#shared-core';
import { type PlotFrame, usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

/** The head as recorded: one path through the reduced readings, interrupted where the probe was lost. */
export function TraceLayer({ drawn }: { readonly drawn: readonly DrawnPoint[] }) {
  const frame = usePlotFrame();
  const { footPx } = useStripMeasures();
  const clipId = `strip-clip-${useId().replaceAll(/[^a-z0-9]/gi, '')}`;
  if (!frame) return null;
  const { left, right, top, bottom } = frame;
  return (
    <g>
      <clipPath id={clipId}>
        <rect x={left} y={top} width={right - left} height={bottom - footPx - top} />
      </clipPath>
      <path d={tracePath(drawn, frame)} className="strip-trace" clipPath={`url(#${clipId})`} />
    </g>
  );
}

/** Tenths of a pixel: finer steps cannot be seen and only make the path longer. */
const tenth = (pixel: number) => Math.round(pixel * 10) / 10;

export function tracePath(
  drawn: readonly DrawnPoint[],
  { freeXOf, freeYOf }: Pick<PlotFrame, 'freeXOf' | 'freeYOf'>,
): string {
  let path = '';
  let isDrawing = false;
  for (const { timeS, value } of drawn) {
    if (value === null) isDrawing = false;
    else {
      path += `${isDrawing ? 'L' : 'M'}${tenth(freeXOf(timeS))} ${tenth(freeYOf(value))}`;
      isDrawing = true;
    }
  }
  return path;
}
