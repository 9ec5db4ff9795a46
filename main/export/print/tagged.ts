import type { Pdf } from './page.ts';

/**
 * A place in the structure tree (ISO 32000-1, 14.7): what assistive programs read in place of the drawing. Marked here, since the
 * library draws and writes marks, but which text is a heading or a cell only its caller knows.
 */
export type Tag = ReturnType<Pdf['struct']>;

/** The library knows `bbox` and `scope` too; its types don't yet. */
type TagOptions = NonNullable<Parameters<Pdf['struct']>[1]> & {
  readonly bbox?: readonly number[];
  readonly scope?: 'Row' | 'Column';
};

/** Standard structure types that are used (ISO 32000-1, 14.8.4). */
export type TagType =
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'LBody'
  | 'Table'
  | 'Caption'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure';

/** The root of a document's structure; everything added to it is drawn at once. */
export function documentTag(pdf: Pdf): Tag {
  const root = pdf.struct('Document');
  pdf.addStructure(root);
  return root;
}

/** An element that holds others. */
export function branch(pdf: Pdf, parent: Tag, type: TagType): Tag {
  const element = pdf.struct(type);
  parent.add(element);
  return element;
}

/** An element with what is drawn for it; it may go on over pages. */
export function leaf(
  pdf: Pdf,
  parent: Tag,
  type: TagType,
  draw: () => void,
  options: TagOptions = {},
): void {
  const element = pdf.struct(type, options);
  parent.add(element);
  element.add(draw);
  element.end();
}

/** Rules, ruled lines, page numbers, repeated titles: nothing that is to be read out. */
export function decoration(pdf: Pdf, type: 'Layout' | 'Pagination', draw: () => void): void {
  pdf.markContent('Artifact', { type });
  draw();
  pdf.endMarkedContent();
}
