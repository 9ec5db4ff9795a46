/** `1.013,25` with a decimal comma: the points only group digits. */
export function withoutGroups(text: string): string {
  return /^\s*[+-]?\d{1,3}(?:\.\d{3})+(?:,|$|\s)/.test(text) ? text.replaceAll('.', '') : text;
}
