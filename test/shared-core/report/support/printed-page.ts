import type { Block, PrintedDocument } from '../../../../shared-core/report/document.ts';

/** A page as it stands on paper, a line each; spaces that do not break as `~`, a drawing by its caption. */
export function printedPage({
  title,
  subtitle,
  blocks,
  footer,
}: PrintedDocument): readonly string[] {
  return [`${title} / ${subtitle}`, ...printedBlocks(blocks), `(${footer})`].map(visible);
}

export function printedBlocks(blocks: readonly Block[]): readonly string[] {
  return blocks.flatMap(linesOf).map(visible);
}

const visible = (line: string) => line.replaceAll('\u00a0', '~');

function linesOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return [`${'#'.repeat(block.level)} ${block.text}`];
    case 'paragraph':
      return [block.text];
    case 'caution':
      return [`! ${block.text}`];
    case 'list':
      return block.items.map((item, index) => `${block.ordered ? `${index + 1}.` : '-'} ${item}`);
    case 'table':
      return [
        `[${block.caption}]`,
        block.columns
          .map(({ title, align }) => (align === 'end' ? `${title} →` : title))
          .join(' | '),
        ...block.rows.map((cells) => cells.join(' | ')),
      ];
    case 'figure':
      return [`<${block.caption}>`];
    case 'question':
      return [`${block.number}. ${block.title} [${block.marks}]`];
    case 'answer-lines':
      return [`${'_'.repeat(block.count)}`];
    case 'page-break':
      return ['====='];
  }
}
