import type { Mark } from '#shared-core';
import { markSign } from '../words/index.ts';
import { usePlotFrame } from './plot-frame.ts';

/** Marks as small flags along the top edge; their words are in the list beside the strip. */
export function MarksLayer({ marks }: { readonly marks: readonly Mark[] }) {
  const frame = usePlotFrame();
  if (!frame) return null;
  return (
    <g>
      {marks.map(({ markId, timeS, mark }) => {
        const x = frame.xOf(timeS);
        if (x < frame.left || x > frame.right) return null;
        return (
          <g key={markId}>
            <line x1={x} x2={x} y1={frame.top} y2={frame.bottom} className="mark-line" />
            <text x={x} y={frame.top - 6} className="mark-sign">
              {markSign(mark)}
            </text>
          </g>
        );
      })}
    </g>
  );
}
