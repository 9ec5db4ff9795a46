import { randomInt } from 'node:crypto';

/** No letter or digit that is taken for another when read off a projector. */
const signs = 'ABCDEFGHJKMNPQRSTUVWXYZ23456789';
const codeLength = 6;

/** A fresh code for one lesson: one of 31⁶, short enough to be typed by a class. */
export function newLessonCode(pick: (below: number) => number = randomInt): string {
  return Array.from({ length: codeLength }, () => signs[pick(signs.length)]).join('');
}

/** What somebody typed, as codes are written. */
export function asTyped(text: string): string {
  return text.toUpperCase();
}
