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
        const name = fittingName(stageLabels[stage], look.shortName, width, height);
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
            {name && <StageName name={name} x={left + width / 2} y={top + height / 2} />}
          </g>
        );
      })}
    </g>
  );
}

interface FittingName {
  readonly text: string;
  readonly isUpright: boolean;
}

function StageName({ name, x, y }: { name: FittingName; x: number; y: number }) {
  const turn = name.isUpright ? undefined : `rotate(-90 ${x} ${y})`;
  return (
    <text x={x} y={y} dy="0.35em" className="stage-name" transform={turn}>
      {name.text}
    </text>
  );
}

/** The whole name where it fits, else the short one, else the short one on its side. */
function fittingName(full: string, short: string, width: number, height: number) {
  if (full.length * letterWidth + 14 <= width) return { text: full, isUpright: true };
  if (short.length * letterWidth + 10 <= width) return { text: short, isUpright: true };
  const fitsOnItsSide = width >= 17 && short.length * letterWidth <= height;
  return fitsOnItsSide ? { text: short, isUpright: false } : null;
}
