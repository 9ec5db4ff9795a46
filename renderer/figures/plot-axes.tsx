import type { ReactNode } from 'react';
import { CartesianGrid, ComposedChart, XAxis, YAxis } from 'recharts';
import type { Axis } from './axis.ts';

interface PlotAxesProps {
  readonly width: number;
  readonly height: number;
  readonly x: Axis;
  readonly y: Axis;
  /** Ticks along the upper edge: the same quantity in another measure. */
  readonly above?: Axis | undefined;
  /** What ticks and names take around the plot [px]. */
  readonly room: Readonly<Record<'left' | 'right' | 'top' | 'bottom', number>>;
  readonly textPx: number;
  /** Kept free at the foot of the plot, below the vertical scale [px]. */
  readonly footPx?: number;
  /** Of so many ticks along the foot one has its words. */
  readonly everyTick?: number;
  /** Upright lines of the grid; without them the ticks stand out of the axes. */
  readonly hasUprightGrid: boolean;
  /** What the drawing shows, in a sentence; null where words beside it say so. */
  readonly description: string | null;
  /** Layers in the coordinates of the plot. */
  readonly children: ReactNode;
}

/**
 * Axes, ticks and grid of every drawing in the window, by the chart library; what stands on them are layers of our own, since
 * they show intervals, interruptions and textures that no ready-made line has. So the library is given axes and no data.
 */
export function PlotAxes(props: PlotAxesProps) {
  const { width, height, x, y, above, room, textPx, footPx = 0, everyTick = 1 } = props;
  const { hasUprightGrid, description, children } = props;
  const tickPx = hasUprightGrid ? 0 : 6;
  const tickLook = { tickSize: tickPx, tickLine: tickPx > 0 };
  return (
    <ComposedChart
      width={width}
      height={height}
      margin={{ top: above ? 0 : room.top, right: room.right, bottom: 0, left: 0 }}
      accessibilityLayer={false}
      {...(description === null
        ? { 'aria-hidden': true }
        : { role: 'img', 'aria-label': description })}
    >
      <CartesianGrid vertical={hasUprightGrid} syncWithTicks={hasUprightGrid} />
      <XAxis
        {...scaleOf(x)}
        dataKey="x"
        {...tickLook}
        height={room.bottom}
        tickMargin={0.77 * textPx - tickPx}
        interval={everyTick - 1}
      />
      {above && (
        <XAxis
          {...scaleOf(above)}
          dataKey="x"
          xAxisId="above"
          orientation="top"
          height={room.top}
          tickSize={0.4 * textPx}
          tickMargin={0.27 * textPx}
          axisLine={false}
          interval={0}
        />
      )}
      <YAxis
        {...scaleOf(y)}
        {...tickLook}
        width={room.left}
        tickMargin={0.5 * textPx - tickPx}
        padding={{ bottom: footPx }}
        interval={0}
      />
      {children}
    </ComposedChart>
  );
}

function scaleOf({ low, high, ticks, tickWords }: Axis) {
  return {
    type: 'number' as const,
    domain: [low, high],
    allowDataOverflow: true,
    ticks: [...ticks],
    tickFormatter: tickWords,
  };
}
