import { type DrawnPoint, say } from '#shared-core';
import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

const label = say('not believed');

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
  // Above the name of the limit, beside which a sensor's power-on value of 85 °C comes to lie.
  const nameY = last && Math.max(frame.top - 6, last.y - radius - 1.6 * textPx);
  const isAtEnd = last !== undefined && last.x + label.length * letterPx > frame.right;
  return (
    <g>
      {dots.map(({ timeS, x, y }) => (
        <circle key={timeS} cx={x} cy={y} r={radius} className="doubtful-dot" />
      ))}
      {last && nameY !== undefined && (
        <>
          <line
            x1={last.x}
            x2={last.x}
            y1={nameY + 4}
            y2={last.y - radius}
            className="doubtful-leader"
          />
          <text
            x={last.x}
            y={nameY}
            textAnchor={isAtEnd ? 'end' : 'start'}
            className="doubtful-name"
          >
            {label}
          </text>
        </>
      )}
    </g>
  );
}
