import { useMemo } from 'react';
import { type Drawing, drawingToSvg } from '#shared-core';

/** A figure as it will stand in the report, on white paper in the dark as well. */
export function DrawnFigure({
  drawing,
  caption,
}: {
  readonly drawing: Drawing;
  readonly caption: string;
}) {
  const source = useMemo(
    () => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(drawingToSvg(drawing))}`,
    [drawing],
  );
  return (
    <figure className="drawn-figure">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone the figure is wider than the screen, and is then scrolled by keys. */}
      <div className="drawn-figure-paper" tabIndex={0}>
        <img src={source} alt={drawing.altText} />
      </div>
      <figcaption className="small soft">{caption}</figcaption>
    </figure>
  );
}
