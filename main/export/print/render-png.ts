import { type Drawing, drawingToSvg } from '#shared-core';
import { hasOwnLetters } from './fallback-font.ts';
import { reportFonts } from './report-fonts.ts';

/** Three times the 96 dots of a screen's inch: sharp in print and on a projector. */
const zoom = 3;

/** A figure as PNG, drawn without a browser and with the report's own typeface. */
export async function renderPng(drawing: Drawing): Promise<Uint8Array> {
  const { Resvg } = await import('@resvg/resvg-js');
  const image = new Resvg(drawingToSvg(drawing), {
    font: {
      // Only for letters that the report's typeface lacks: a figure looks the same on every system otherwise.
      loadSystemFonts: drawing.shapes.some(
        (shape) => shape.kind === 'text' && !hasOwnLetters(shape.text),
      ),
      fontFiles: [reportFonts.regular, reportFonts.bold],
      defaultFontFamily: reportFonts.family,
    },
    fitTo: { mode: 'zoom', value: zoom },
  });
  return image.render().asPng();
}
