import { type Drawing, inDecimals } from '#shared-core';
import { usePreferences } from '../parts/index.ts';
import { DrawnShapes } from './drawn-shapes.tsx';

interface DrawnFigureProps {
  readonly drawing: Drawing;
  readonly caption: string;
}

/** A figure as it will stand in the report, in the reader’s signs, on white paper in the dark as well. */
export function DrawnFigure({ drawing, caption }: DrawnFigureProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { widthPt, heightPt, altText, shapes } = drawing;
  return (
    <figure className="drawn-figure">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone the figure is wider than the screen, and is then scrolled by keys. */}
      <div className="drawn-figure-paper" tabIndex={0}>
        <svg
          viewBox={`0 0 ${widthPt} ${heightPt}`}
          role="img"
          aria-label={inDecimals(altText, decimal)}
        >
          <DrawnShapes
            shapes={shapes.map((shape) =>
              shape.kind === 'text' ? { ...shape, text: inDecimals(shape.text, decimal) } : shape,
            )}
          />
        </svg>
      </div>
      <figcaption className="small soft">{caption}</figcaption>
    </figure>
  );
}
