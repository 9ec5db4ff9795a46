import type { Estimate } from '#shared-core';
import type { PlotScale } from '../figures/index.ts';

interface IntervalCrossProps {
  readonly scale: PlotScale;
  readonly x: Estimate;
  readonly y: Estimate;
  readonly shape: 'head' | 'pot';
  readonly name: string;
}

/** An estimated point: the region it may lie in, its bars, its sign and its name. */
export function IntervalCross({ scale, x, y, shape, name }: IntervalCrossProps) {
  const { xOf, yOf, textPx } = scale;
  const half = 0.53 * textPx;
  const atX = xOf(x.value);
  const atY = yOf(y.value);
  const isRight = atX > (scale.left + scale.right) / 2;
  const nameX = isRight ? xOf(x.low) - 0.6 * textPx : xOf(x.high) + 0.6 * textPx;
  return (
    <g className="estimate" data-shape={shape}>
      <rect
        x={xOf(x.low)}
        y={yOf(y.high)}
        width={Math.max(2, xOf(x.high) - xOf(x.low))}
        height={Math.max(2, yOf(y.low) - yOf(y.high))}
        className="estimate-region"
      />
      <path
        d={`M${xOf(x.low)} ${atY}H${xOf(x.high)}M${atX} ${yOf(y.low)}V${yOf(y.high)}`}
        className="estimate-bar"
      />
      {shape === 'head' ? (
        <path
          d={`M${atX} ${atY - half}L${atX + half} ${atY}L${atX} ${atY + half}L${atX - half} ${atY}Z`}
          className="estimate-sign"
        />
      ) : (
        <circle cx={atX} cy={atY} r={0.43 * textPx} className="estimate-sign" />
      )}
      <text
        x={nameX}
        y={atY - 0.8 * textPx}
        textAnchor={isRight ? 'end' : 'start'}
        className="plot-name"
      >
        {name}
      </text>
    </g>
  );
}
