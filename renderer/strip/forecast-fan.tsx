import { useId } from 'react';
import { type Estimate, say } from '#shared-core';
import type { PlacedName } from './band-names.ts';
import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';
import { aboveLinePx } from './type-room.ts';

interface ForecastFanProps {
  readonly fromS: number;
  readonly fromC: number;
  readonly endS: Estimate;
  readonly limitC: number;
  /** Where the limit's own name stands. */
  readonly limitName: PlacedName | null;
}

/** From the present head to the time the strength limit is expected: the span of the 90 % interval, which may run on out of view. */
export function ForecastFan(props: ForecastFanProps) {
  const { fromS, fromC, endS, limitC, limitName } = props;
  const clipId = `fan-clip-${useId().replaceAll(/[^a-z0-9]/gi, '')}`;
  const frame = usePlotFrame();
  const { letterPx, textPx } = useStripMeasures();
  if (!frame || endS.high <= fromS || fromC >= limitC) return null;
  const x0 = frame.xOf(fromS);
  const y0 = frame.yOf(fromC);
  const y1 = frame.yOf(limitC);
  const { left, right, top, bottom, freeXOf } = frame;
  const early = freeXOf(Math.max(fromS, endS.low));
  const late = freeXOf(endS.high);
  const likely = freeXOf(Math.max(fromS, endS.value));
  const label = late > right ? say('limit expected, perhaps later') : say('limit expected');
  const labelPx = label.length * letterPx;
  const labelX = roomFor(labelPx, (early + Math.min(late, right)) / 2, x0, right);
  const isTaken =
    labelX !== null &&
    limitName !== null &&
    labelX - labelPx / 2 < limitName.x + limitName.width + letterPx &&
    labelX + labelPx / 2 > limitName.x - letterPx;
  const curve = (x: number) => `Q ${(x0 + x) / 2} ${y0} ${x} ${y1}`;
  return (
    <g>
      <clipPath id={clipId}>
        <rect x={left} y={top} width={right - left} height={bottom - top} />
      </clipPath>
      <g clipPath={`url(#${clipId})`}>
        <path
          d={`M ${x0} ${y0} ${curve(early)} L ${late} ${y1} Q ${(x0 + late) / 2} ${y0} ${x0} ${y0} Z`}
          className="fan-area"
        />
        <path d={`M ${x0} ${y0} ${curve(likely)}`} className="fan-line" />
        <line x1={early} x2={late} y1={y1} y2={y1} className="fan-end" />
      </g>
      {labelX !== null && (
        <text
          x={labelX}
          y={y1 - aboveLinePx(textPx) - (isTaken ? 1.2 * textPx : 0)}
          className="fan-name"
        >
          {label}
        </text>
      )}
    </g>
  );
}

/** Over the span it names, but clear of the line that has come so far; null where there is no room. */
function roomFor(width: number, middle: number, from: number, to: number): number | null {
  const x = Math.max(middle, from + 12 + width / 2);
  return x + width / 2 <= to ? x : null;
}
