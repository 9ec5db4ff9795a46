import { type ReactNode, useEffect } from 'react';
import { useSmallTextPx } from '../design/index.ts';
import type { Axis } from './axis.ts';
import { keepOutOfTabOrder } from './keep-out-of-tab-order.ts';
import { PlotAxes } from './plot-axes.tsx';
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
  useEffect(() => keepOutOfTabOrder(box.current));
  const isLaidOut = measured !== null && measured.width > 0 && measured.height > 0;
  const { width, height } = isLaidOut ? measured : usualSize;
  const textPx = useSmallTextPx();
  const widest = ({ ticks, tickWords }: Axis, least: number) =>
    Math.max(...ticks.map((tick) => tickWords(tick).length), least) * letterShare * textPx;
  const room = {
    left: 1.2 * textPx + widest(y, 2),
    // The last tick's words stick out of the paper, but not out of the drawing.
    right: Math.max(1.2 * textPx, widest(x, 1) / 2),
    top: textPx * (above ? 3.2 : 1.75),
    bottom: 3.35 * textPx,
  };
  const [left, right] = [room.left, width - room.right];
  const [top, bottom] = [room.top, height - room.bottom];
  const scale = plotScale({ left, right, top, bottom }, x, y, textPx);
  return (
    <div className="paper" ref={box}>
      <PlotAxes
        {...{ width, height, x, y, above, room, textPx, description }}
        everyTick={Math.ceil((x.ticks.length * (widest(x, 1) + 0.7 * textPx)) / (right - left))}
        hasUprightGrid
      >
        {children(scale)}
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
      </PlotAxes>
    </div>
  );
}
