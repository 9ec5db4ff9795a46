import {
  AlignmentType,
  BorderStyle,
  type FileChild,
  HeadingLevel,
  ImageRun,
  Paragraph,
  Table,
  TableCell,
  TableRow,
  TextRun,
  WidthType,
} from 'docx';
import { type Block, type DocumentTable, keepUnits } from '#shared-core';
import { columnWidths } from '../column-widths.ts';
import type { RenderPng } from '../print/png-once.ts';
import { questionHeading } from '../question-heading.ts';
import { captionStyle, cautionStyle, contentWidthTwip, numberedList } from './word-styles.ts';

/** The word processor wants the size of a picture in dots of a screen. */
const dotsPerPt = 96 / 72;
const contentWidthPt = contentWidthTwip / 20;
/** Size of the letters in a table [half points], and what a cell keeps free at either side [twip]. */
const [cellHalfPt, marginTwip] = [17, 60];
const shadeOfTitles = 'EEEEEE';
/** A table of so many rows stays on one page. */
const mostRowsTogether = 14;

/**
 * One piece of a document as the paragraphs, table or picture of a word processor, to be written on in. `list` tells one numbered list
 * from the next, so that each begins at 1.
 */
export async function wordBlocks(
  block: Block,
  list: number,
  render: RenderPng,
): Promise<readonly FileChild[]> {
  switch (block.kind) {
    case 'heading':
      return [heading(block.text, block.level === 1 ? 'HEADING_1' : 'HEADING_2')];
    case 'paragraph':
      return [new Paragraph(keepUnits(block.text))];
    case 'caution':
      return [new Paragraph({ text: keepUnits(block.text), style: cautionStyle })];
    case 'list':
      return block.items.map(keepUnits).map((text) =>
        block.ordered
          ? new Paragraph({
              text,
              numbering: { reference: numberedList, level: 0, instance: list },
            })
          : new Paragraph({ text, bullet: { level: 0 } }),
      );
    case 'table':
      return tableWithCaption(block);
    case 'figure':
      return await figureWithCaption(block, render);
    case 'question':
      return [heading(questionHeading(block), 'HEADING_3')];
    case 'answer-lines':
      return Array.from({ length: block.count }, () => lineToWriteOn());
    case 'page-break':
      return [new Paragraph({ pageBreakBefore: true })];
  }
}

function heading(text: string, level: keyof typeof HeadingLevel): Paragraph {
  return new Paragraph({ text, heading: HeadingLevel[level], keepNext: true });
}

function caption(text: string, place: { readonly keepNext: boolean }): Paragraph {
  return new Paragraph({ text, style: captionStyle, ...place });
}

/**
 * Whoever opens the document may have none of the usual fonts: a digit of the widest of those that stand in for them takes 0.64 of
 * the height, most letters less, bold ones 0.7; from memory.
 */
const [widthOfHeight, boldOfHeight] = [0.64, 0.7];
const wordTwip = (word: string, isTitle: boolean) =>
  2 * marginTwip + word.length * 10 * cellHalfPt * (isTitle ? boldOfHeight : widthOfHeight);

function tableWithCaption(table: DocumentTable): FileChild[] {
  const { caption: words, columns, rows } = table;
  const widthsTwip = columnWidths(table, contentWidthTwip, wordTwip).map(Math.round);
  const isShort = rows.length <= mostRowsTogether;
  const rowOf = (cells: readonly string[], { isTitle = false, isLast = false } = {}) =>
    new TableRow({
      tableHeader: isTitle,
      cantSplit: true,
      children: columns.map(
        ({ align }, at) =>
          new TableCell({
            width: { size: widthsTwip[at] ?? 0, type: WidthType.DXA },
            margins: { left: marginTwip, right: marginTwip, top: 40, bottom: 40 },
            ...(isTitle && { shading: { fill: shadeOfTitles } }),
            children: [
              new Paragraph({
                alignment: align === 'end' ? AlignmentType.END : AlignmentType.START,
                spacing: { after: 0 },
                keepNext: isTitle || (isShort && !isLast),
                children: [
                  new TextRun({
                    text: keepUnits(cells[at] ?? ''),
                    bold: isTitle,
                    size: cellHalfPt,
                  }),
                ],
              }),
            ],
          }),
      ),
    });
  const titles = columns.map(({ title }) => title);
  const hasTitles = titles.some((title) => title !== '');
  return [
    caption(words, { keepNext: true }),
    new Table({
      width: { size: contentWidthTwip, type: WidthType.DXA },
      columnWidths: widthsTwip,
      rows: [
        ...(hasTitles ? [rowOf(titles, { isTitle: true })] : []),
        ...rows.map((row, at) => rowOf(row, { isLast: at === rows.length - 1 })),
      ],
    }),
    new Paragraph({ spacing: { after: 0 } }),
  ];
}

async function figureWithCaption(
  { drawing, caption: words }: Extract<Block, { kind: 'figure' }>,
  render: RenderPng,
): Promise<FileChild[]> {
  const scale = dotsPerPt * Math.min(1, contentWidthPt / drawing.widthPt);
  return [
    new Paragraph({
      keepNext: true,
      children: [
        new ImageRun({
          type: 'png',
          data: await render(drawing),
          transformation: { width: drawing.widthPt * scale, height: drawing.heightPt * scale },
          altText: { name: words, title: words, description: drawing.altText },
        }),
      ],
    }),
    caption(words, { keepNext: false }),
  ];
}

/** Neighbours with the same border have one about them all, unless each is told to have one below. */
function lineToWriteOn(): Paragraph {
  const line = { style: BorderStyle.SINGLE, size: 4, color: '999999', space: 1 } as const;
  return new Paragraph({
    spacing: { before: 240, after: 0 },
    border: { bottom: line, between: line },
  });
}
