import { type Drawing, drawingToSvg } from '#shared-core';
import { renderPng } from './render-png.ts';

export type RenderPng = (drawing: Drawing) => Promise<Uint8Array>;

/** Renders each figure once, however many files of a pack show it: pictures take longer than all the rest of a page. */
export function pngOnce(render: RenderPng = renderPng): RenderPng {
  const made = new Map<string, Promise<Uint8Array>>();
  return (drawing) => {
    const svg = drawingToSvg(drawing);
    const known = made.get(svg) ?? render(drawing);
    made.set(svg, known);
    return known;
  };
}
