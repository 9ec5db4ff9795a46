/** What a native module is built for, by its first bytes. */
export type NativeKind = 'linux' | 'darwin' | 'win32' | 'unknown';

/**
 * ELF and PE begin with their names, Mach-O with one of its numbers: one processor, or several in one file.
 * Sources: System V ABI, chapter 4; Microsoft, PE Format; Apple, mach-o/loader.h and mach-o/fat.h.
 */
export function nativeKind(firstBytes: Uint8Array): NativeKind {
  const hex = Buffer.from(firstBytes.subarray(0, 4)).toString('hex');
  if (hex === '7f454c46') return 'linux';
  if (hex.startsWith('4d5a')) return 'win32';
  return ['cffaedfe', 'cefaedfe', 'cafebabe', 'cafebabf'].includes(hex) ? 'darwin' : 'unknown';
}

/** What a module is meant for, by the folder it lies in; null where that says nothing. */
export function kindOfPath(path: string): NativeKind | null {
  const found = /(linux|android|darwin|win32)/.exec(path)?.[1];
  if (found === undefined) return null;
  return found === 'android' ? 'linux' : (found as NativeKind);
}
