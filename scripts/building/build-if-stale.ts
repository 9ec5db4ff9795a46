import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { sourceFingerprint } from './source-fingerprint.ts';

/** Something built from sources into a folder of `.build`. */
export interface BuildTarget {
  /** For people: "the window". */
  readonly name: string;
  readonly outputFolder: string;
  /** Files and folders, relative to the project, that the result depends on. */
  readonly inputs: readonly string[];
  build(): Promise<void>;
}

/** Builds unless the last build saw exactly these sources. Says whether it had to. */
export async function buildIfStale(
  target: BuildTarget,
  { root, report }: { readonly root: string; readonly report: (line: string) => void },
): Promise<boolean> {
  const stamp = path.join(target.outputFolder, '.fingerprint');
  const fingerprint = sourceFingerprint(root, target.inputs);
  if (readStamp(stamp) === fingerprint) return false;
  report(`Building ${target.name} …`);
  await target.build();
  mkdirSync(target.outputFolder, { recursive: true });
  writeFileSync(stamp, fingerprint);
  return true;
}

function readStamp(file: string): string | null {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return null;
  }
}
