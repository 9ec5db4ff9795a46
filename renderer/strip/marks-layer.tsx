import type { Mark } from '#shared-core';
import { markSign } from '../words/index.ts';
import { groupSigns } from './mark-signs.ts';
import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

/** Marks as small flags along the top edge; their words are in the list beside the strip. */
export function MarksLayer({ marks }: { readonly marks: readonly Mark[] }) {
  const frame = usePlotFrame();
  const { textPx } = useStripMeasures();
  if (!frame) return null;
  const placed = marks.flatMap(({ markId, timeS, mark }) => {
    const x = frame.xOf(timeS);
    return x < frame.left || x > frame.right ? [] : [{ markId, x, sign: markSign(mark) }];
  });
  return (
    <g>
      {placed.map(({ markId, x }) => (
        <line key={markId} x1={x} x2={x} y1={frame.top} y2={frame.bottom} className="mark-line" />
      ))}
      {groupSigns(placed, 1.1 * textPx).map(({ x, text }) => (
        <text key={x} x={x} y={frame.top - 6} className="mark-sign">
          {text}
        </text>
      ))}
    </g>
  );
}
