import type { ReactNode } from 'react';
import { useSmallTextPx } from '../design/index.ts';
import type { Axis } from './axis.ts';
import { type PlotScale, plotScale } from './plot-scale.ts';
import { useBoxSize } from './use-box-size.ts';

interface PlotPaperProps {
  readonly x: Axis;
  readonly y: Axis;
  /** Ticks along the upper edge: the same quantity in another measure. */
  readonly above?: Axis | undefined;
  /** What the drawing shows, in a sentence: all that a screen reader needs to hear of it. */
  readonly description: string;
  readonly children: (scale: PlotScale) => ReactNode;
}

/** Drawn at this size until the layout is known. */
const usualSize = { width: 420, height: 340 };
/** Of the type's height; about the width of a figure. */
const letterShare = 0.56;

/** Squared paper with two named axes; what is drawn on it is the caller's. */
export function PlotPaper({ x, y, above, description, children }: PlotPaperProps) {
  const [box, measured] = useBoxSize<HTMLDivElement>();
  const isLaidOut = measured !== null && measured.width > 0 && measured.height > 0;
  const { width, height } = isLaidOut ? measured : usualSize;
  const widestTick = Math.max(...y.ticks.map((tick) => y.tickWords(tick).length), 2);
  const textPx = useSmallTextPx();
  const scale = plotScale(
    {
      left: textPx * (1.2 + widestTick * letterShare),
      right: width - 1.2 * textPx,
      top: textPx * (above ? 3.2 : 1.75),
      bottom: height - 3.35 * textPx,
    },
    x,
    y,
    textPx,
  );
  return (
    <div className="paper" ref={box}>
      <svg width={width} height={height} role="img" aria-label={description}>
        <PaperGrid x={x} y={y} above={above} scale={scale} />
        {children(scale)}
      </svg>
    </div>
  );
}

interface PaperGridProps {
  readonly x: Axis;
  readonly y: Axis;
  readonly above: Axis | undefined;
  readonly scale: PlotScale;
}

function PaperGrid({ x, y, above, scale }: PaperGridProps) {
  const { left, right, top, bottom, textPx, xOf, yOf } = scale;
  const widest = Math.max(...x.ticks.map((tick) => x.tickWords(tick).length), 1);
  const tickPx = textPx * letterShare * widest;
  const everyTick = Math.ceil((x.ticks.length * (tickPx + 0.7 * textPx)) / (right - left));
  return (
    <g>
      {x.ticks.map((tick, index) => {
        // The last one may stick out of the paper, but not out of the drawing.
        const isAtEdge = xOf(tick) + tickPx / 2 > right + 1.1 * textPx;
        return (
          <g key={tick}>
            <line x1={xOf(tick)} x2={xOf(tick)} y1={top} y2={bottom} className="paper-line" />
            {index % everyTick === 0 && (
              <text
                x={isAtEdge ? right + 1.1 * textPx : xOf(tick)}
                y={bottom + 1.47 * textPx}
                textAnchor={isAtEdge ? 'end' : 'middle'}
              >
                {x.tickWords(tick)}
              </text>
            )}
          </g>
        );
      })}
      {y.ticks.map((tick) => (
        <g key={tick}>
          <line x1={left} x2={right} y1={yOf(tick)} y2={yOf(tick)} className="paper-line" />
          <text x={left - 0.47 * textPx} y={yOf(tick)} dy="0.35em" textAnchor="end">
            {y.tickWords(tick)}
          </text>
        </g>
      ))}
      {above?.ticks.map((tick) => (
        <g key={tick}>
          <line
            x1={xOf(tick)}
            x2={xOf(tick)}
            y1={top - 0.4 * textPx}
            y2={top}
            className="paper-edge"
          />
          <text x={xOf(tick)} y={top - 0.67 * textPx} textAnchor="middle">
            {above.tickWords(tick)}
          </text>
        </g>
      ))}
      <path d={`M${left} ${top}V${bottom}H${right}`} className="paper-edge" />
      <text
        x={(left + right) / 2}
        y={bottom + 2.9 * textPx}
        textAnchor="middle"
        className="axis-name"
      >
        {x.name}
      </text>
      <text x={0} y={textPx * (above ? 2.67 : 1.07)} className="axis-name">
        {y.name}
      </text>
      {above && (
        <text x={right} y={1.07 * textPx} textAnchor="end" className="axis-name">
          {above.name}
        </text>
      )}
    </g>
  );
}
