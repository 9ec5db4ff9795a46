// biome-ignore lint/suspicious/noControlCharactersInRegex: XML 1.0 allows none of these, escaped or not.
const forbidden = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;
const special = /[&<>"]/;

/** Text for an XML element or attribute. */
export function escapeXml(text: string): string {
  const allowed = text.replace(forbidden, '');
  if (!special.test(allowed)) return allowed;
  return allowed
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

export const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** `A`, `Z`, `AA` … for columns counted from 0. */
export function columnLetters(column: number): string {
  const rest = Math.floor(column / 26);
  const letter = String.fromCharCode(65 + (column % 26));
  return rest === 0 ? letter : columnLetters(rest - 1) + letter;
}
