import { describe, expect, test } from 'vitest';
import { detectEncoding } from '../../../shared-core/csv/detect-encoding.ts';

const utf8 = (text: string): number[] => [...new TextEncoder().encode(text)];
const utf16 = (text: string, isLittle: boolean): number[] =>
  [...text].flatMap((character) => {
    const code = character.charCodeAt(0);
    return isLittle ? [code & 255, code >> 8] : [code >> 8, code & 255];
  });
const table = 'Zeit;Kopf °C\n0;20,5\n';

describe('the encoding of a text', () => {
  test('is told by its mark', () => {
    expect(detectEncoding([0xff, 0xfe, 0x41, 0])).toBe('utf-16le');
    expect(detectEncoding([0xfe, 0xff, 0, 0x41])).toBe('utf-16be');
    expect(detectEncoding([0xff, 0x41])).toBe('windows-1252');
    expect(detectEncoding([0xfe, 0xfe])).toBe('windows-1252');
    expect(detectEncoding([0xef, 0xbb, 0xbf, 0x41])).toBe('utf-8');
  });

  test('is UTF-16 without a mark where every second byte is zero', () => {
    expect(detectEncoding(utf16(table, true))).toBe('utf-16le');
    expect(detectEncoding(utf16(table, false))).toBe('utf-16be');
    // Too short to tell, and bytes that are zero anywhere.
    expect(detectEncoding([0x41, 0, 0x42, 0])).toBe('utf-8');
    expect(detectEncoding(Array(200).fill(0))).toBe('utf-8');
    expect(detectEncoding([...utf8('a'.repeat(60)), ...utf16('b'.repeat(20), true)])).toBe('utf-8');
    // A few zeros at the other places do no harm, many do.
    const long = utf16('a'.repeat(200), true);
    expect(detectEncoding(long.with(0, 0))).toBe('utf-16le');
    expect(detectEncoding(long.map((byte, at) => (at % 20 === 0 ? 0 : byte)))).toBe('utf-8');
  });

  test('is told by the first 512 bytes', () => {
    expect(detectEncoding([...utf8('a'.repeat(512)), ...utf16('b'.repeat(2000), true)])).toBe(
      'utf-8',
    );
  });

  test('is UTF-8 where all its bytes are well-formed as such, whatever is cut off at the end', () => {
    for (const text of [
      table,
      '\u00e9',
      '\u0800',
      '\ud7ff',
      '\ue000',
      '\uffff',
      '\u{10000}',
      '\u{10ffff}',
      'a\u{1f600}b',
    ]) {
      expect([text, detectEncoding(utf8(text))]).toEqual([text, 'utf-8']);
    }
    const cut = utf8('°C \u{1f600}').slice(0, -1);
    expect(detectEncoding(cut)).toBe('utf-8');
    expect(detectEncoding(cut.slice(0, -2))).toBe('utf-8');
  });

  test.each([
    ['a byte that only follows', [0x80, 0x41]],
    ['an overlong form of two', [0xc1, 0xbf]],
    ['an overlong form of three', [0xe0, 0x9f, 0xbf]],
    ['half of a surrogate pair', [0xed, 0xa0, 0x80]],
    ['an overlong form of four', [0xf0, 0x8f, 0xbf, 0xbf]],
    ['what lies beyond Unicode', [0xf4, 0x90, 0x80, 0x80]],
    ['a lead that is none', [0xf5, 0x80, 0x80, 0x80]],
    ['a letter where a byte must follow', [0xc2, 0x41]],
    ['a letter as the third of three', [0xe2, 0x82, 0x41]],
    ['a lead as the third of three', [0xe2, 0x82, 0xc2]],
    ['a letter as the last of four', [0xf0, 0x9f, 0x98, 0x41]],
    ['a degree sign of Windows', [0x32, 0x30, 0xb0, 0x43]],
  ])('is not UTF-8 with %s', (_, bytes) => {
    expect(detectEncoding(bytes)).toBe('windows-1252');
    expect(detectEncoding([...utf8('°C'), ...bytes, 0x41])).toBe('windows-1252');
  });
});
