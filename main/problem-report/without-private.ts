/** What must not leave the computer, each with what stands for it. */
export interface Private {
  readonly text: string;
  readonly standsFor: string;
}

/** Whoever's folder it is, it bears a name. */
const folderOfSomebody = /(?:\/home\/|\/Users\/|[A-Za-z]:\\Users\\)[^\s/\\:"')]+/g;

/** Named by a number alone; all others bear a serial number, or the name of somebody's telephone. */
const namedPort = /\/dev\/(?!(?:tty(?:USB|ACM|AMA|S)|pts\/)\d+(?![^\s:,"')]))[^\s:,"')]+/g;

/** Replaces what is private in a text, the longest first, in capitals or not, wherever it stands as a word of its own. */
export function withoutPrivate(text: string, secrets: readonly Private[]): string {
  const longestFirst = secrets
    .filter((secret) => secret.text.length > 1)
    .toSorted((a, b) => b.text.length - a.text.length);
  const cleaned = longestFirst.reduce(
    (left, secret) => left.replaceAll(asWord(secret.text), secret.standsFor),
    text.replaceAll(namedPort, '/dev/[port]'),
  );
  return cleaned.replaceAll(folderOfSomebody, '[home]');
}

function asWord(text: string): RegExp {
  const literal = text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}])${literal}(?![\\p{L}\\p{N}])`, 'giu');
}

/** The same in every text of a value, however deep. */
export function everyText<T>(value: T, change: (text: string) => string): T {
  if (typeof value === 'string') return change(value) as T;
  if (Array.isArray(value)) return value.map((one) => everyText(one, change)) as T;
  if (typeof value !== 'object' || value === null) return value;
  const changed = Object.entries(value).map(([name, one]) => [name, everyText(one, change)]);
  return Object.fromEntries(changed) as T;
}
