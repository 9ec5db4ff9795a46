import type { Drawing } from '../figures/index.ts';

/** One piece of a printed page. */
export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  /** A paragraph that must not be overlooked. */
  | { readonly kind: 'caution'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly ordered: boolean }
  | DocumentTable
  | { readonly kind: 'figure'; readonly drawing: Drawing; readonly caption: string }
  | {
      readonly kind: 'question';
      readonly number: number;
      readonly title: string;
      readonly marks: number;
    }
  /** Ruled lines to write on. */
  | { readonly kind: 'answer-lines'; readonly count: number }
  | { readonly kind: 'page-break' };

export interface DocumentTable {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly {
    readonly title: string;
    readonly align: 'start' | 'end';
    /** Share of the width, relative to the others. */
    readonly width: number;
  }[];
  readonly rows: readonly (readonly string[])[];
}

/** A printable document as data; how it looks on paper is decided where it is printed. */
export interface PrintedDocument {
  readonly title: string;
  readonly subtitle: string;
  readonly blocks: readonly Block[];
  /** Stands at the foot of every page. */
  readonly footer: string;
}
