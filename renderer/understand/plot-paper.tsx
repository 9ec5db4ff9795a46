import type { ReactNode } from 'react';
import { useBoxSize } from '../strip/index.ts';
import type { Axis } from './axis.ts';
import { type PlotScale, plotScale } from './plot-scale.ts';

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
const letterPx = 8.4;

/** Squared paper with two named axes; what is drawn on it is the caller's. */
export function PlotPaper({ x, y, above, description, children }: PlotPaperProps) {
  const [box, measured] = useBoxSize<HTMLDivElement>();
  const isLaidOut = measured !== null && measured.width > 0 && measured.height > 0;
  const { width, height } = isLaidOut ? measured : usualSize;
  const widestTick = Math.max(...y.ticks.map((tick) => y.tickWords(tick).length), 2);
  const scale = plotScale(
    {
      left: 18 + widestTick * letterPx,
      right: width - 18,
      top: above ? 48 : 26,
      bottom: height - 50,
    },
    x,
    y,
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
  const { left, right, top, bottom, xOf, yOf } = scale;
  return (
    <g>
      {x.ticks.map((tick) => (
        <g key={tick}>
          <line x1={xOf(tick)} x2={xOf(tick)} y1={top} y2={bottom} className="paper-line" />
          <text x={xOf(tick)} y={bottom + 22} textAnchor="middle">
            {x.tickWords(tick)}
          </text>
        </g>
      ))}
      {y.ticks.map((tick) => (
        <g key={tick}>
          <line x1={left} x2={right} y1={yOf(tick)} y2={yOf(tick)} className="paper-line" />
          <text x={left - 7} y={yOf(tick)} dy="0.35em" textAnchor="end">
            {y.tickWords(tick)}
          </text>
        </g>
      ))}
      {above?.ticks.map((tick) => (
        <g key={tick}>
          <line x1={xOf(tick)} x2={xOf(tick)} y1={top - 6} y2={top} className="paper-edge" />
          <text x={xOf(tick)} y={top - 10} textAnchor="middle">
            {above.tickWords(tick)}
          </text>
        </g>
      ))}
      <path d={`M${left} ${top}V${bottom}H${right}`} className="paper-edge" />
      <text x={(left + right) / 2} y={bottom + 43} textAnchor="middle" className="axis-name">
        {x.name}
      </text>
      <text x={0} y={above ? 40 : 16} className="axis-name">
        {y.name}
      </text>
      {above && (
        <text x={right} y={16} textAnchor="end" className="axis-name">
          {above.name}
        </text>
      )}
    </g>
  );
}
