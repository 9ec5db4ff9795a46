import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

interface NowLayerProps {
  readonly timeS: number;
  readonly headC: number | null;
}

/** Where the run is now: a fine line and a dot on the head. */
export function NowLayer({ timeS, headC }: NowLayerProps) {
  const frame = usePlotFrame();
  const { textPx } = useStripMeasures();
  if (!frame) return null;
  const x = frame.xOf(timeS);
  if (x < frame.left || x > frame.right) return null;
  return (
    <g>
      <line x1={x} x2={x} y1={frame.top} y2={frame.bottom} className="now-line" />
      {headC !== null && (
        <circle cx={x} cy={frame.yOf(headC)} r={Math.max(6, textPx / 3)} className="now-dot" />
      )}
    </g>
  );
}
