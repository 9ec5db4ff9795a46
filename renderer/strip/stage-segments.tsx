import { type StageSpan, stageLabels, told } from '#shared-core';
import { stageLooks } from '../design/index.ts';
import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

interface StageSegmentsProps {
  readonly stages: readonly StageSpan[];
  readonly nowS: number;
  readonly height: number;
}

/** The stages along the foot of the strip: colour, texture and name say the same thing. */
export function StageSegments({ stages, nowS, height }: StageSegmentsProps) {
  const frame = usePlotFrame();
  const { letterPx, textPx } = useStripMeasures();
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
        const name = fittingName(told(stageLabels[stage]), look.shortName, {
          width,
          height,
          letterPx,
          textPx,
        });
        return (
          <g key={`${stage}-${fromS}`}>
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

interface Room {
  readonly width: number;
  readonly height: number;
  readonly letterPx: number;
  readonly textPx: number;
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
function fittingName(full: string, short: string, room: Room): FittingName | null {
  const { width, height, letterPx, textPx } = room;
  if ((full.length + 1.5) * letterPx <= width) return { text: full, isUpright: true };
  if ((short.length + 1) * letterPx <= width) return { text: short, isUpright: true };
  const fitsOnItsSide = width >= 1.1 * textPx && short.length * letterPx <= height;
  return fitsOnItsSide ? { text: short, isUpright: false } : null;
}
