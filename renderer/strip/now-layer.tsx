import type { SeriesPoint } from '#shared-core';
import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

interface NowLayerProps {
  readonly timeS: number;
  readonly head: SeriesPoint | null;
}

/**
 * Where the run is now, a fine line, and a dot on the head as last read. The two part where time runs ahead of the readings: a
 * dot on the line would stand beside the end of the trace, at a temperature nobody read then.
 */
export function NowLayer({ timeS, head }: NowLayerProps) {
  const frame = usePlotFrame();
  const { textPx } = useStripMeasures();
  if (!frame) return null;
  const x = frame.xOf(timeS);
  if (x < frame.left || x > frame.right) return null;
  return (
    <g>
      <line x1={x} x2={x} y1={frame.top} y2={frame.bottom} className="now-line" />
      {head && (
        <circle
          cx={frame.xOf(head.timeS)}
          cy={frame.yOf(head.value)}
          r={Math.max(6, textPx / 3)}
          className="now-dot"
        />
      )}
    </g>
  );
}
