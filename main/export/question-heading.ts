import { type Block, counted } from '#shared-core';

export type Question = Extract<Block, { readonly kind: 'question' }>;

/** The line above a question, the same in every form in which its sheet is given out. */
export function questionHeading({ number, title, marks }: Question): string {
  return `${number}  ${title}  [${counted(marks, 'mark')}]`;
}
