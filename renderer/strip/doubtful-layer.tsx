import type { DrawnPoint } from '#shared-core';
import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

const label = 'not believed';

/** Readings that are not believed: hollow, named once, and never joined to the line. */
export function DoubtfulLayer({ drawn }: { readonly drawn: readonly DrawnPoint[] }) {
  const frame = usePlotFrame();
  const { textPx, letterPx } = useStripMeasures();
  if (!frame) return null;
  const dots = drawn.flatMap(({ timeS, value }) => {
    const x = frame.xOf(timeS);
    const isInSight = value !== null && x >= frame.left && x <= frame.right;
    return isInSight ? [{ timeS, x, y: frame.yOf(value) }] : [];
  });
  const last = dots.at(-1);
  const radius = Math.max(5, textPx / 4);
  const room = label.length * letterPx + 2 * radius + 6;
  const isLeft = last !== undefined && last.x + room > frame.right;
  return (
    <g>
      {dots.map(({ timeS, x, y }) => (
        <circle key={timeS} cx={x} cy={y} r={radius} className="doubtful-dot" />
      ))}
      {last && (
        <text
          x={last.x + (isLeft ? -1 : 1) * (radius + 6)}
          y={last.y}
          dy="0.35em"
          textAnchor={isLeft ? 'end' : 'start'}
          className="doubtful-name"
        >
          {label}
        </text>
      )}
    </g>
  );
}
