import type PDFKit from 'pdfkit';
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

export function setFont(pdf: Pdf, weight: 'regular' | 'bold', sizePt: number, colour = ink): Pdf {
  return pdf.font(reportFonts[weight]).fontSize(sizePt).fillColor(colour);
}

/** Words in the full width at the present place. */
export function write(pdf: Pdf, text: string, options: PDFKit.Mixins.TextOptions = {}): void {
  pdf.text(text, margins.left, pdf.y, { width: contentWidth(pdf), lineGap: 1.5, ...options });
}
