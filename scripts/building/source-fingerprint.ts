import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/**
 * A fingerprint of every file under the given files and folders. By content, not by date: a checkout or a
 * copy gives new dates to old files and, worse, old dates to new ones.
 */
export function sourceFingerprint(root: string, inputs: readonly string[]): string {
  const hash = createHash('sha256');
  for (const input of inputs) {
    for (const file of filesUnder(path.join(root, input))) {
      hash
        .update(`${path.relative(root, file)}\0`)
        .update(readFileSync(file))
        .update('\0');
    }
  }
  return hash.digest('hex');
}

function filesUnder(entry: string): readonly string[] {
  try {
    return readdirSync(entry, { withFileTypes: true })
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .flatMap((child) => filesUnder(path.join(entry, child.name)));
  } catch {
    return [entry];
  }
}
