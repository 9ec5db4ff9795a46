import { detectEncoding, type RequestBody, say } from '#shared-core';
import { type SentFile, sizeProblem } from '../exchange/index.ts';

export type Encoding = RequestBody<'imports/finish'>['encoding'];

/** What of a file is looked at before it is taken in: hundreds of lines, and no more of a hostile one. */
export const beginningBytes = 64 * 1024;

export type FileBeginning =
  | { readonly kind: 'read'; readonly bytes: Uint8Array; readonly isWhole: boolean }
  /** A whole sentence. */
  | { readonly kind: 'refused'; readonly sentence: string };

export async function readBeginning(file: SentFile): Promise<FileBeginning> {
  const problem = sizeProblem(file.size);
  if (problem !== null) {
    const sentence = `${problem.charAt(0).toUpperCase()}${problem.slice(1)}.`;
    return { kind: 'refused', sentence };
  }
  try {
    const bytes = new Uint8Array(await file.slice(0, beginningBytes).arrayBuffer());
    return { kind: 'read', bytes, isWhole: bytes.length === file.size };
  } catch {
    return { kind: 'refused', sentence: say('The file can’t be read. Choose it again.') };
  }
}

/** The beginning as text, without a line that may be cut off. */
export function beginningText(
  { bytes, isWhole }: Extract<FileBeginning, { kind: 'read' }>,
  encoding: Encoding,
): string {
  const name = encoding === 'auto' ? detectEncoding(bytes) : encoding;
  const text = new TextDecoder(name).decode(bytes);
  if (isWhole) return text;
  const lastBreak = Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r'));
  return lastBreak === -1 ? text : text.slice(0, lastBreak + 1);
}
