import { usePlotFrame } from './plot-frame.ts';

interface PlateauLayerProps {
  readonly azeotropeC: number;
  readonly limitC: number;
}

/** The band in which the head holds at the local air pressure, on this probe's scale, drawn behind the line. */
export function PlateauLayer({ azeotropeC, limitC }: PlateauLayerProps) {
  const frame = usePlotFrame();
  if (!frame) return null;
  const low = frame.yOf(azeotropeC);
  const high = frame.yOf(limitC);
  return (
    <g>
      <rect
        x={frame.left}
        y={high}
        width={frame.right - frame.left}
        height={Math.max(2, low - high)}
        fill="url(#texture-band)"
      />
      <line x1={frame.left} x2={frame.right} y1={high} y2={high} className="band-edge" />
      <line x1={frame.left} x2={frame.right} y1={low} y2={low} className="band-edge" />
    </g>
  );
}
