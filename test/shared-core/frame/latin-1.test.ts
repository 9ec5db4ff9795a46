import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countTextBytes, latin1Bytes, printable } from '#shared-core';

test('every Latin-1 character is its own byte, and one beyond it is a question mark', () => {
  const all = String.fromCharCode(...Array.from({ length: 256 }, (_, code) => code));
  expect([...latin1Bytes(all)]).toEqual(Array.from({ length: 256 }, (_, code) => code));
  expect([...latin1Bytes('\u0100Ω🍐')]).toEqual([0x3f, 0x3f, 0x3f]);
});

// ISO 8859-1: 0x20 … 0x7e and 0xa1 … 0xff have a shape, 0x00 … 0x1f and 0x7f … 0x9f are controls, 0xa0 is a blank that does not break.
test('whatever arrived is shown in as many characters, with a dot for each that has no shape', () => {
  expect(printable('\0\x1f ~\x7f\x9f\xa0\xa1ÿ\u0100')).toBe('·· ~···¡ÿ·');
});

test('a text longer than allowed is cut there and says so, one of just that length is not', () => {
  expect([printable('78.42', 5), printable('78.421', 5), printable('', 5)]).toEqual([
    '78.42',
    '78.42…',
    '',
  ]);
  expect(printable('x'.repeat(1000))).toBe(`${'x'.repeat(120)}…`);
});

test('text bytes are the printable ones of ASCII, tabs and line ends, and no other', () => {
  const isText = (byte: number) => countTextBytes(Uint8Array.of(byte)) === 1;
  const texts = Array.from({ length: 256 }, (_, byte) => byte).filter(isText);
  expect(String.fromCharCode(...texts)).toMatch(/^\t\n\r ![ -~]*~$/);
  expect(texts).toHaveLength(3 + 95);
  fc.assert(
    fc.property(fc.uint8Array(), fc.uint8Array(), (one, other) => {
      const together = countTextBytes(Uint8Array.of(...one, ...other));
      expect(together).toBe(countTextBytes(one) + countTextBytes(other));
    }),
  );
});
