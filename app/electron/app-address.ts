/** The scheme and host the window's own files are served under. */
export const appScheme = 'app';
export const appHost = 'window';
export const appStartAddress = `${appScheme}://${appHost}/index.html`;

/**
 * Whether an address is a page of this app. Compared part by part after parsing: `origin` of a custom
 * scheme is "null" in Node, and comparing the beginning of the text would let `app://window.elsewhere` in.
 */
export function isAppAddress(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const { protocol, host, username, password } = new URL(address);
  return protocol === `${appScheme}:` && host === appHost && username === '' && password === '';
}
