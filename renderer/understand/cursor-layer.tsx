import { useXAxisInverseScale } from 'recharts';
import { PressArea } from '../figures/index.ts';
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
  return (
    <g>
      <path d={`M${x} ${frame.top}V${frame.bottom}`} className="cursor-line" />
      <path d={`M${x - 9} ${frame.top}H${x + 9}L${x} ${frame.top + 13}Z`} className="cursor-sign" />
      <PressArea
        edges={frame}
        onPress={(fromLeftPx) =>
          onTimeS(Math.max(0, Math.round(Number(timeOf(frame.left + fromLeftPx)))))
        }
      />
    </g>
  );
}
