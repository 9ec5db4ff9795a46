import { type Block, keepUnits } from '#shared-core';
import { writable } from './fallback-font.ts';

/** A range of numbers is torn at its dash by no line: this sign has no width, and the typeface has it (a word joiner it has not). */
const noBreak = '\ufeff';
const rangeDash = /(?<=\d)–(?=\d)/g;

const kept = (text: string) => keepUnits(writable(text)).replace(rangeDash, `–${noBreak}`);

/** A block in letters that can be written, whose numbers stay on one line with their units. */
export function keptBlock(block: Block): Block {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
    case 'caution':
      return { ...block, text: kept(block.text) };
    case 'list':
      return { ...block, items: block.items.map(kept) };
    case 'figure':
      return { ...block, caption: kept(block.caption) };
    case 'table':
      return {
        ...block,
        caption: kept(block.caption),
        rows: block.rows.map((row) => row.map(kept)),
      };
    default:
      return block;
  }
}
