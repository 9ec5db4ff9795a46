import { crc32c } from './crc-32c.ts';

/** How a line ends: `,"crc":"` + eight hexadecimal digits + `"}`, then a line feed. */
const label = ',"crc":"';
export const checksumLength = 8;
const lineEnd = '"}';
const digits = '0123456789abcdef';
const tailLength = label.length + checksumLength + lineEnd.length;

export interface CheckedLine {
  /** ASCII, one character a byte, with its line feed. */
  readonly line: string;
  readonly checksum: string;
}

/**
 * A line that tells of itself whether it is whole: a JSON object whose last field is a CRC-32C over every byte before it. Characters
 * outside ASCII are escaped, so any byte above 0x7f is damage.
 *
 * @param value an object with at least one field [1]
 * @returns the line, and its checksum as it stands there: `crc = CRC-32C(bytes before ,"crc":")`
 *
 * Valid for any object that JSON can hold. Source: see `crc32c`; the format stands in FORMAT.md.
 * @example
 * checkedLine({ kind: 'note' }).line.slice(0, 22) // => "{\"kind\":\"note\",\"crc\":\""
 */
export function checkedLine(value: object): CheckedLine {
  const covered = escapeBeyondAscii(JSON.stringify(value).slice(0, -1));
  const checksum = checksumText(crc32c(covered));
  return { line: `${covered}${label}${checksum}${lineEnd}\n`, checksum };
}

/**
 * The checksum of a line that is whole.
 *
 * @param line as {@link checkedLine} wrote it, without its line feed; one character a byte [1]
 * @returns the checksum; null where any byte of it is wrong: `crc ≠ CRC-32C(bytes before ,"crc":")`
 *
 * Valid for any text. Source: see `crc32c`; the format stands in FORMAT.md.
 * @example
 * checksumOfLine('{"kind":"note","crc":"00000000"}') // => null
 */
export function checksumOfLine(line: string): string | null {
  const coveredLength = line.length - tailLength;
  if (!line.startsWith(label, coveredLength) || !line.endsWith(lineEnd)) return null;
  const checksumAt = coveredLength + label.length;
  if (!isChecksumAt(line, checksumAt, crc32c(line, coveredLength))) return null;
  return line.slice(checksumAt, checksumAt + checksumLength);
}

/** Held against the line digit by digit: a long log has hundreds of thousands, and a text of each would be made to be thrown away. */
function isChecksumAt(line: string, at: number, checksum: number): boolean {
  for (let digit = 0; digit < checksumLength; digit += 1) {
    const value = (checksum >>> (4 * (checksumLength - 1 - digit))) & 0xf;
    if (line.charCodeAt(at + digit) !== digits.charCodeAt(value)) return false;
  }
  return true;
}

/** Eight lower-case hexadecimal digits. */
function checksumText(checksum: number): string {
  return checksum.toString(16).padStart(checksumLength, '0');
}

function escapeBeyondAscii(text: string): string {
  return text.replace(/[\x7f-\uffff]/g, (character) => {
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}
