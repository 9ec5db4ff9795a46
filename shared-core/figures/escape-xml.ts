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
