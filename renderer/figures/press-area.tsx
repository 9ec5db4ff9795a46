import type { PointerEvent } from 'react';
import type { PaperEdges } from './plot-scale.ts';

interface PressAreaProps {
  readonly edges: PaperEdges;
  /** How far from the left edge the pointer is, while it presses [px]. */
  readonly onPress: (fromLeftPx: number) => void;
}

/** A part of a plot along which one presses or drags; a slider beside it does the same by keyboard. */
export function PressArea({ edges: { left, right, top, bottom }, onPress }: PressAreaProps) {
  const press = ({ currentTarget, clientX, buttons }: PointerEvent<SVGRectElement>) => {
    if (buttons !== 0) onPress(clientX - currentTarget.getBoundingClientRect().left);
  };
  return (
    <rect
      x={left}
      y={top}
      width={right - left}
      height={bottom - top}
      className="cursor-reach"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        press(event);
      }}
      onPointerMove={press}
    />
  );
}
