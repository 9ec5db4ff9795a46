import type PDFKit from 'pdfkit';
import { fallbackFont, piecesByLetters, type SystemFont } from './fallback-font.ts';
import { reportFonts } from './report-fonts.ts';

export type Pdf = InstanceType<typeof PDFKit>;

/** A4 with room to punch holes [pt]. */
export const margins = { top: 54, bottom: 60, left: 56.6, right: 56.6 } as const;
export const bodyPt = 10;
export const ink = '#17152b';
export const softInk = '#4b4862';
export const rule = '#b9b5a8';

export const contentWidth = (pdf: Pdf) => pdf.page.width - margins.left - margins.right;
export const pageEnd = (pdf: Pdf) => pdf.page.height - margins.bottom;

/** Goes on with a new page unless so much height is left on this one [pt]; an open tag goes on with it. */
export function keepTogether(pdf: Pdf, heightPt: number): void {
  const isFresh = pdf.y <= margins.top + 1;
  if (!isFresh && pdf.y + heightPt > pageEnd(pdf)) pdf.continueOnNewPage();
}

type Weight = 'regular' | 'bold';

export function setFont(pdf: Pdf, weight: Weight, sizePt: number, colour = ink): Pdf {
  return pdf.font(reportFonts[weight]).fontSize(sizePt).fillColor(colour);
}

/** A font of the system may be broken or of a kind that can't be embedded: no reason to lose a report. */
function takesFont(pdf: Pdf, { file, name }: SystemFont): boolean {
  try {
    if (name === undefined) pdf.font(file);
    else pdf.font(file, name);
    return true;
  } catch {
    return false;
  }
}

/** Draws a text piece by piece, each in a font that has its letters; the report's own is set again at the end. */
export function inLetters(
  pdf: Pdf,
  weight: Weight,
  text: string,
  draw: (piece: string, isFirst: boolean, isLast: boolean) => void,
): void {
  const pieces = piecesByLetters(text);
  for (const [index, piece] of pieces.entries()) {
    const other = fallbackFont(piece);
    if (other === null || !takesFont(pdf, other)) pdf.font(reportFonts[weight]);
    draw(piece, index === 0, index === pieces.length - 1);
  }
  pdf.font(reportFonts[weight]);
}

/** Words within a width, in lines. */
export function writeAt(
  pdf: Pdf,
  weight: Weight,
  text: string,
  [x, y]: readonly [number, number],
  options: PDFKit.Mixins.TextOptions,
): void {
  inLetters(pdf, weight, text, (piece, isFirst, isLast) => {
    const more = { ...options, continued: !isLast };
    if (isFirst) pdf.text(piece, x, y, more);
    else pdf.text(piece, more);
  });
}

/** Words in the full width at the present place. */
export function write(pdf: Pdf, text: string, weight: Weight = 'regular'): void {
  writeAt(pdf, weight, text, [margins.left, pdf.y], { width: contentWidth(pdf), lineGap: 1.5 });
}
