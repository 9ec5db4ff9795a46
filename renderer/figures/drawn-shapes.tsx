import { createElement } from 'react';
import type { Drawing } from '#shared-core';

/** The shapes of a drawing in the window; `drawingToSvg` writes the same into a file. */
export function DrawnShapes({ shapes }: Pick<Drawing, 'shapes'>) {
  return createElement('g', null, ...shapes.map(drawn));
}

function drawn(shape: Drawing['shapes'][number]) {
  if (shape.kind === 'path') {
    const { points, closed, fill, stroke } = shape;
    return (
      <path
        d={`M${points.map((point) => point.map(hundredth).join(' ')).join('L')}${closed ? 'Z' : ''}`}
        fill={fill ?? 'none'}
        stroke={stroke?.colour}
        // Themes for far-off eyes make the lines of a plot thicker.
        style={{ strokeWidth: `calc(${stroke?.widthPt ?? 0} * var(--pt, 1px))` }}
        strokeDasharray={stroke?.dash?.join(' ')}
        strokeLinejoin="round"
        strokeLinecap="round"
      />
    );
  }
  const [x, y] = shape.at;
  return (
    <text
      x={x}
      y={y}
      fontSize={shape.sizePt}
      fontWeight={shape.weight === 'bold' ? 700 : undefined}
      fill={shape.colour}
      textAnchor={shape.anchor}
      transform={shape.upright ? `rotate(-90 ${x} ${y})` : undefined}
    >
      {shape.text}
    </text>
  );
}

const hundredth = (value: number) => Math.round(value * 100) / 100;
