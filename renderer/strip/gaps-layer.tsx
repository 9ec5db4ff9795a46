import { say } from '#shared-core';
import type { LinkGap } from '../stores/index.ts';
import { usePlotFrame } from './plot-frame.ts';

interface GapsLayerProps {
  readonly gaps: readonly LinkGap[];
  readonly nowS: number;
}

/** Stretches without a probe: crossed out, so that a gap is never taken for a steady head. */
export function GapsLayer({ gaps, nowS }: GapsLayerProps) {
  const frame = usePlotFrame();
  if (!frame) return null;
  return (
    <g>
      {gaps.map(({ fromS, toS, reason }) => {
        const left = frame.xOf(fromS);
        const width = Math.max(2, frame.xOf(toS ?? nowS) - left);
        return (
          <g key={fromS}>
            <rect
              x={left}
              y={frame.top}
              width={width}
              height={frame.bottom - frame.top}
              fill="url(#texture-gap)"
            />
            {width > (reason === 'program-closed' ? 110 : 70) && (
              <text x={left + width / 2} y={frame.top + 20} className="gap-name">
                {reason === 'program-closed' ? say('program closed') : say('no probe')}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
