import type { DrawnPoint } from '#shared-core';
import { usePlotFrame } from './plot-frame.ts';

/** Readings that are not believed: hollow, and never joined to the line. */
export function DoubtfulLayer({ drawn }: { readonly drawn: readonly DrawnPoint[] }) {
  const frame = usePlotFrame();
  if (!frame) return null;
  return (
    <g>
      {drawn.map(({ timeS, value }) => {
        const x = frame.xOf(timeS);
        const isInSight = value !== null && x >= frame.left && x <= frame.right;
        return isInSight ? (
          <circle key={timeS} cx={x} cy={frame.yOf(value)} r={5} className="doubtful-dot" />
        ) : null;
      })}
    </g>
  );
}
