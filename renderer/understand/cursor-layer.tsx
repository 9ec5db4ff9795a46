import type { PointerEvent } from 'react';
import { useXAxisInverseScale } from 'recharts';
import { usePlotFrame } from '../strip/index.ts';

interface CursorLayerProps {
  readonly timeS: number;
  readonly onTimeS: (timeS: number) => void;
}

/** The cursor on the strip: press or drag to move it. The slider below does the same by keyboard. */
export function CursorLayer({ timeS, onTimeS }: CursorLayerProps) {
  const frame = usePlotFrame();
  const timeOf = useXAxisInverseScale();
  if (!frame || !timeOf) return null;
  const x = frame.xOf(timeS);
  const move = ({ currentTarget, clientX, buttons }: PointerEvent<SVGRectElement>) => {
    if (buttons === 0) return;
    const offset = clientX - currentTarget.getBoundingClientRect().left;
    onTimeS(Math.max(0, Math.round(Number(timeOf(frame.left + offset)))));
  };
  return (
    <g>
      <path d={`M${x} ${frame.top}V${frame.bottom}`} className="cursor-line" />
      <path d={`M${x - 9} ${frame.top}H${x + 9}L${x} ${frame.top + 13}Z`} className="cursor-sign" />
      <rect
        x={frame.left}
        y={frame.top}
        width={frame.right - frame.left}
        height={frame.bottom - frame.top}
        className="cursor-reach"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          move(event);
        }}
        onPointerMove={move}
      />
    </g>
  );
}
