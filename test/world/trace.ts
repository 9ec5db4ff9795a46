import { createHash } from 'node:crypto';

/** The digest of a long text that comes in lines, and is not kept. */
export interface Trace {
  add(line: string): void;
  digest(): string;
}

/** A digest takes as long for a line as for a page: lines go in by the page [characters]. */
const pageLength = 65_536;

export function createTrace(): Trace {
  const hash = createHash('sha256');
  let page = '';

  function turn(): void {
    hash.update(page);
    page = '';
  }

  return {
    add(line) {
      page += line;
      if (page.length >= pageLength) turn();
    },
    digest() {
      turn();
      return hash.digest('hex');
    },
  };
}
