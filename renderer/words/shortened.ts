/** A text cut after a whole word to at most so many letters, the cut shown by an ellipsis. */
export function shortened(text: string, most: number): string {
  const line = text.replaceAll(/\s+/g, ' ').trim();
  if (line.length <= most) return line;
  const cut = line.slice(0, most - 2);
  const lastSpace = cut.lastIndexOf(' ');
  return `${lastSpace > most / 3 ? cut.slice(0, lastSpace) : cut} …`;
}
