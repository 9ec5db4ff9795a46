import { type StageSpan, stageLabels } from '#shared-core';
import { stageLooks } from '../design/index.ts';
import { usePlotFrame } from './plot-frame.ts';

interface StageSegmentsProps {
  readonly stages: readonly StageSpan[];
  readonly nowS: number;
  readonly height: number;
}

/** About the width of a letter of the strip's type, for choosing which name fits. */
const letterWidth = 8.4;

/** The stages along the foot of the strip: colour, texture and name say the same thing. */
export function StageSegments({ stages, nowS, height }: StageSegmentsProps) {
  const frame = usePlotFrame();
  if (!frame) return null;
  const top = frame.bottom - height;
  return (
    <g>
      <rect
        x={frame.left}
        y={top}
        width={frame.right - frame.left}
        height={height}
        className="strip-foot"
      />
      {stages.map(({ stage, fromS, toS }) => {
        const left = frame.xOf(fromS);
        const width = frame.xOf(toS ?? nowS) - left;
        if (width < 0.5) return null;
        const look = stageLooks[stage];
        const name = fittingName(stageLabels[stage], look.shortName, width);
        return (
          <g key={stage}>
            <rect x={left} y={top} width={width} height={height} fill={look.colour} />
            <rect
              x={left}
              y={top}
              width={width}
              height={height}
              fill={`url(#${look.texture})`}
              fillOpacity={0.35}
            />
            <line x1={left} x2={left} y1={frame.top} y2={frame.bottom} className="stage-edge" />
            {name && (
              <text x={left + width / 2} y={top + height / 2} dy="0.35em" className="stage-name">
                {name}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function fittingName(full: string, short: string, width: number): string | null {
  if (full.length * letterWidth + 14 <= width) return full;
  return short.length * letterWidth + 10 <= width ? short : null;
}
