import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

interface PlateauLayerProps {
  readonly azeotropeC: number;
  readonly limitC: number;
  readonly azeotropeLabel: string;
  readonly limitLabel: string;
}

const longName = 'plateau band on this probe';

/** The band in which the head holds at the local air pressure, on this probe's scale, drawn behind the line. */
export function PlateauLayer(props: PlateauLayerProps) {
  const { azeotropeC, limitC, azeotropeLabel, limitLabel } = props;
  const frame = usePlotFrame();
  const { textPx, letterPx } = useStripMeasures();
  if (!frame) return null;
  const low = frame.yOf(azeotropeC);
  const high = frame.yOf(limitC);
  const isRoomy = low - high > 3 * textPx;
  // Left of most that the run writes into the band.
  const hasRoomFor = (name: string) => name.length * letterPx < 0.4 * (frame.right - frame.left);
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
      <text x={frame.left + 10} y={high - 7} className="band-name">
        {limitLabel}
      </text>
      <text x={frame.left + 10} y={low + 1.15 * textPx} className="band-name">
        {azeotropeLabel}
      </text>
      {isRoomy && (
        <text x={frame.left + 10} y={(low + high) / 2} dy="0.35em" className="band-name">
          {hasRoomFor(longName) ? longName : 'plateau'}
        </text>
      )}
    </g>
  );
}
