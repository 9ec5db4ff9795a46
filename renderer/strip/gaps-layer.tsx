import { say } from '#shared-core';
import type { LinkGap } from '../stores/index.ts';
import { usePlotFrame } from './plot-frame.ts';

interface GapsLayerProps {
  readonly gaps: readonly LinkGap[];
  readonly nowS: number;
}

function gapName(reason: LinkGap['reason']): string {
  if (reason === 'program-closed') return say('program closed');
  return reason === 'reader-stopped' ? say('probe not read') : say('no probe');
}

/** What its name takes, in the longer of the two languages [px]. */
function gapNameWidth(reason: LinkGap['reason']): number {
  return reason === 'program-closed' || reason === 'reader-stopped' ? 110 : 70;
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
            {width > gapNameWidth(reason) && (
              <text x={left + width / 2} y={frame.top + 20} className="gap-name">
                {gapName(reason)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
