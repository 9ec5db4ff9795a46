import { createRequire } from 'node:module';
import { z } from 'zod';
import { reportFonts } from './report-fonts.ts';

/** What a printer asks of a laid out text; it scales the positions in place. */
interface GlyphRun {
  readonly positions: readonly object[];
}

interface Font {
  readonly characterSet: readonly number[];
  glyphForCodePoint(codePoint: number): unknown;
  layout(text: string, features?: unknown): GlyphRun;
}

const fontReader = z.object({
  openSync: z.custom<(file: string) => Font>((open) => typeof open === 'function'),
});
const require = createRequire(import.meta.url);

/** Words kept with their layout: some reports' worth, a few megabytes. */
const mostWords = 5000;
/** Ligatures that have a code point of their own: to a reader they are letters. */
const isLigature = (codePoint: number) => codePoint >= 0xfb00 && codePoint <= 0xfb06;

const opened = new Map<string, Font>();

/**
 * Makes a document use the report's typeface as it was read for the first one, with the layout of every word laid out
 * so far: a class's sheets say the same words over and over, and laying them out is half of the work of printing.
 */
export function shareReportFonts(pdf: PDFKit.PDFDocument): void {
  for (const file of [reportFonts.regular, reportFonts.bold]) {
    const font = opened.get(file) ?? openFont(file);
    opened.set(file, font);
    // The printer takes an object that lays out text for a font; its types don't say so.
    pdf.registerFont(file, font as unknown as PDFKit.Mixins.PDFFontSource);
  }
}

function openFont(file: string): Font {
  const font = fontReader.parse(require('fontkit')).openSync(file);
  // A glyph is of the letter it was first seen as: seen in order here, or a document would depend on those before it.
  for (const codePoint of font.characterSet.toSorted((a, b) => a - b)) {
    if (!isLigature(codePoint)) font.glyphForCodePoint(codePoint);
  }
  const words = new Map<string, GlyphRun>();
  const layOut = font.layout.bind(font);
  font.layout = (text, features) => {
    if (features !== undefined) return layOut(text, features);
    const known = words.get(text) ?? layOut(text);
    if (words.size >= mostWords) words.clear();
    words.set(text, known);
    const positions = known.positions.map((position) => ({ ...position }));
    return Object.create(known, { positions: { value: positions } });
  };
  return font;
}
