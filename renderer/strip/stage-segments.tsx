import { type StageSpan, stageLabels, told } from '#shared-core';
import { stageLooks } from '../design/index.ts';
import { usePlotFrame } from './plot-frame.ts';
import { type StageName, stageNames } from './stage-names.ts';
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
  const drawn = stages.flatMap(({ stage, fromS, toS }) => {
    const left = frame.xOf(fromS);
    const width = frame.xOf(toS ?? nowS) - left;
    if (width < 0.5) return [];
    const look = stageLooks[stage];
    const fullName = told(stageLabels[stage]);
    return [{ key: `${stage}-${fromS}`, left, width, look, fullName, shortName: look.shortName }];
  });
  const names = stageNames(drawn, { height, letterPx, textPx });
  return (
    <g>
      <rect
        x={frame.left}
        y={top}
        width={frame.right - frame.left}
        height={height}
        className="strip-foot"
      />
      {drawn.map(({ key, left, width, look }) => (
        <g key={key}>
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
        </g>
      ))}
      {/* Above all of them: a name may be wider than its stage. */}
      {drawn.map(({ key, left, width }, index) => {
        const name = names[index];
        return (
          name && <NameOfStage key={key} name={name} x={left + width / 2} y={top + height / 2} />
        );
      })}
    </g>
  );
}

function NameOfStage({ name, x, y }: { name: StageName; x: number; y: number }) {
  const turn = name.isUpright ? undefined : `rotate(-90 ${x} ${y})`;
  return (
    <text x={x} y={y} dy="0.35em" className="stage-name" transform={turn}>
      {name.text}
    </text>
  );
}
