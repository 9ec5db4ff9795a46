import type { Block } from '#shared-core';
import { type Question, questionHeading } from '../question-heading.ts';
import { drawFigure, figurePt } from './draw-figure.ts';
import { drawTable, leastTablePt } from './draw-table.ts';
import {
  bodyPt,
  contentWidth,
  ink,
  keepTogether,
  margins,
  type Pdf,
  pageEnd,
  rule,
  setFont,
  write,
  writeAt,
} from './page.ts';
import { branch, decoration, leaf, type Tag } from './tagged.ts';

const lineGapPt = 22;
/** So many lines to write on stay on one page. */
const linesTogether = 10;
const longTextPt = 120;
/** A heading with the space about it. */
const headingPt = 34;
/** A question with the beginning of its text. */
const questionPt = 150;
const listIndentPt = 16;

export function drawBlock(pdf: Pdf, document: Tag, block: Block): void {
  switch (block.kind) {
    case 'heading':
      leaf(pdf, document, block.level === 1 ? 'H1' : 'H2', () =>
        drawHeading(pdf, block.text, block.level),
      );
      break;
    case 'paragraph':
      keepWhole(pdf, block.text, contentWidth(pdf));
      leaf(pdf, document, 'P', () => {
        setFont(pdf, 'regular', bodyPt);
        write(pdf, block.text);
      });
      pdf.y += 6;
      break;
    case 'caution':
      drawCaution(pdf, document, block.text);
      break;
    case 'list':
      drawList(pdf, document, block.items, block.ordered);
      break;
    case 'table':
      drawTable(pdf, document, block);
      break;
    case 'figure':
      drawFigure(pdf, document, block.drawing, block.caption);
      break;
    case 'question':
      leaf(pdf, document, 'H3', () => drawQuestion(pdf, block));
      break;
    case 'answer-lines':
      drawAnswerLines(pdf, block.count);
      break;
    case 'page-break':
      if (pdf.y > margins.top + 1) pdf.addPage();
      break;
  }
}

/**
 * Height that a heading needs with the least of what it stands over [pt]: it is never the last thing on a page. All cautions under a heading stay
 * with it, since none of them is to have a page to itself. 0 for other blocks.
 */
export function withNextPt(pdf: Pdf, blocks: readonly Block[], at: number): number {
  if (blocks[at]?.kind !== 'heading') return 0;
  let height = headingPt;
  let index = at + 1;
  for (let block = blocks[index]; block?.kind === 'caution'; block = blocks[++index]) {
    height += cautionHeight(pdf, block.text) + 7;
  }
  const next = blocks[at + 1];
  if (next?.kind === 'heading') return height + withNextPt(pdf, blocks, at + 1);
  return next === undefined || next.kind === 'caution' ? height : height + leastPt(pdf, next);
}

/** The least of a block that stands on one page [pt]. */
function leastPt(pdf: Pdf, block: Block): number {
  switch (block.kind) {
    case 'paragraph':
      return wholePt(pdf, block.text, contentWidth(pdf));
    case 'list':
      return wholePt(pdf, block.items[0] ?? '', contentWidth(pdf) - listIndentPt);
    case 'table':
      return leastTablePt(pdf, block);
    case 'figure':
      return figurePt(pdf, block.drawing, block.caption);
    case 'question':
      return questionPt;
    case 'answer-lines':
      return Math.min(block.count, linesTogether) * lineGapPt;
    case 'heading':
    case 'caution':
    case 'page-break':
      return 0;
  }
}

const cautionWidth = (pdf: Pdf) => contentWidth(pdf) - 12;

function cautionHeight(pdf: Pdf, text: string): number {
  setFont(pdf, 'bold', bodyPt);
  return pdf.heightOfString(text, { width: cautionWidth(pdf), lineGap: 1.5 });
}

function drawHeading(pdf: Pdf, text: string, level: 1 | 2): void {
  pdf.y += level === 1 ? 8 : 6;
  setFont(pdf, 'bold', level === 1 ? 15 : 12);
  write(pdf, text, 'bold');
  pdf.y += 4;
}

function drawQuestion(pdf: Pdf, question: Question): void {
  keepTogether(pdf, questionPt);
  pdf.y += 10;
  setFont(pdf, 'bold', 11.5);
  write(pdf, questionHeading(question), 'bold');
  pdf.y += 3;
}

/** A bar at the left and bold words: seen in print without colour, too. */
function drawCaution(pdf: Pdf, document: Tag, text: string): void {
  const width = cautionWidth(pdf);
  const height = cautionHeight(pdf, text);
  keepTogether(pdf, height + 8);
  const top = pdf.y;
  decoration(pdf, 'Layout', () => {
    pdf.rect(margins.left, top - 1, 3.5, height + 2).fill('#882255');
  });
  leaf(pdf, document, 'P', () => {
    setFont(pdf, 'bold', bodyPt, ink);
    pdf.text(text, margins.left + 12, top, { width, lineGap: 1.5 });
  });
  pdf.y = top + height + 7;
}

function drawList(pdf: Pdf, document: Tag, items: readonly string[], ordered: boolean): void {
  const list = branch(pdf, document, 'L');
  for (const [index, item] of items.entries()) {
    const width = contentWidth(pdf) - listIndentPt;
    keepWhole(pdf, item, width);
    const top = pdf.y;
    const entry = branch(pdf, list, 'LI');
    leaf(pdf, entry, 'LBody', () => {
      pdf.text(ordered ? `${index + 1}.` : '•', margins.left + 2, top, { lineBreak: false });
      writeAt(pdf, 'regular', item, [margins.left + listIndentPt, top], { width, lineGap: 1.5 });
    });
    entry.end();
    pdf.y += 3;
  }
  list.end();
  pdf.y += 4;
}

/** A line by itself at the top or the foot of a page is easily missed: only long texts go on overleaf. */
function keepWhole(pdf: Pdf, text: string, width: number): void {
  keepTogether(pdf, wholePt(pdf, text, width));
}

function wholePt(pdf: Pdf, text: string, width: number): number {
  setFont(pdf, 'regular', bodyPt);
  return Math.min(longTextPt, pdf.heightOfString(text, { width, lineGap: 1.5 }));
}

function drawAnswerLines(pdf: Pdf, count: number): void {
  keepTogether(pdf, Math.min(count, linesTogether) * lineGapPt);
  for (let index = 0; index < count; index++) {
    if (pdf.y + lineGapPt > pageEnd(pdf)) pdf.addPage();
    pdf.y += lineGapPt;
    decoration(pdf, 'Layout', () =>
      pdf
        .undash()
        .lineWidth(0.5)
        .strokeColor(rule)
        .moveTo(margins.left, pdf.y)
        .lineTo(margins.left + contentWidth(pdf), pdf.y)
        .stroke(),
    );
  }
  pdf.y += 8;
}
