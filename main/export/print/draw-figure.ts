import type { Drawing } from '#shared-core';
import { writable } from './fallback-font.ts';
import {
  contentWidth,
  inLetters,
  keepTogether,
  margins,
  type Pdf,
  setFont,
  softInk,
  write,
} from './page.ts';
import { leaf, type Tag } from './tagged.ts';

const captionPt = 9;

/** A figure as vectors, with its caption under it and its words for screen readers. */
export function drawFigure(pdf: Pdf, document: Tag, drawing: Drawing, caption: string): void {
  const scale = scaleOf(pdf, drawing);
  const height = drawing.heightPt * scale;
  keepTogether(pdf, figurePt(pdf, drawing, caption));
  const [left, top] = [margins.left, pdf.y + 4];
  const draw = () => {
    pdf.save();
    pdf.translate(left, top).scale(scale);
    for (const shape of drawing.shapes) {
      if (shape.kind === 'text') drawText(pdf, shape);
      else drawPath(pdf, shape);
    }
    pdf.restore();
  };
  const bbox = [left, top, left + drawing.widthPt * scale, top + height];
  leaf(pdf, document, 'Figure', draw, { alt: drawing.altText, bbox });
  pdf.y = top + height + 4;
  if (caption !== '') {
    leaf(pdf, document, 'Caption', () => {
      setFont(pdf, 'regular', captionPt, softInk);
      write(pdf, caption);
    });
  }
  pdf.y += 8;
}

const scaleOf = (pdf: Pdf, { widthPt }: Drawing) => Math.min(1, contentWidth(pdf) / widthPt);

/** Height of a figure with its caption [pt]: both on one page. */
export function figurePt(pdf: Pdf, drawing: Drawing, caption: string): number {
  const height = drawing.heightPt * scaleOf(pdf, drawing);
  if (caption === '') return height + 6;
  setFont(pdf, 'regular', captionPt);
  return height + 16 + pdf.heightOfString(caption, { width: contentWidth(pdf), lineGap: 1.5 });
}

function drawPath(pdf: Pdf, shape: Extract<Drawing['shapes'][number], { kind: 'path' }>): void {
  const [first, ...others] = shape.points;
  if (first === undefined) return;
  pdf.moveTo(...first);
  for (const point of others) pdf.lineTo(...point);
  if (shape.closed) pdf.closePath();
  const { stroke, fill } = shape;
  if (stroke !== undefined) {
    pdf.lineWidth(stroke.widthPt).lineJoin('round').lineCap('round').strokeColor(stroke.colour);
    if (stroke.dash === undefined) pdf.undash();
    else pdf.dash(stroke.dash[0] ?? 1, { space: stroke.dash[1] ?? 1 });
  }
  if (fill !== undefined && stroke !== undefined) pdf.fillAndStroke(fill, stroke.colour);
  else if (fill !== undefined) pdf.fill(fill);
  else if (stroke !== undefined) pdf.stroke();
}

function drawText(pdf: Pdf, shape: Extract<Drawing['shapes'][number], { kind: 'text' }>): void {
  const [x, y] = shape.at;
  const text = writable(shape.text);
  const weight = shape.weight ?? 'regular';
  setFont(pdf, weight, shape.sizePt, shape.colour);
  let width = 0;
  inLetters(pdf, weight, text, (piece) => {
    width += pdf.widthOfString(piece);
  });
  const shift = shape.anchor === 'start' ? 0 : shape.anchor === 'middle' ? width / 2 : width;
  pdf.save();
  if (shape.upright) pdf.rotate(-90, { origin: [x, y] });
  // A drawing's text stands on its base line.
  let along = x - shift;
  inLetters(pdf, weight, text, (piece) => {
    pdf.text(piece, along, y, { lineBreak: false, baseline: 'alphabetic' });
    along += pdf.widthOfString(piece);
  });
  pdf.restore();
}
