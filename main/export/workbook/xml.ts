export const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** `A`, `Z`, `AA` … for columns counted from 0. */
export function columnLetters(column: number): string {
  const rest = Math.floor(column / 26);
  const letter = String.fromCharCode(65 + (column % 26));
  return rest === 0 ? letter : columnLetters(rest - 1) + letter;
}
