/** x⁸ + x⁵ + x⁴ + 1 with its bits reversed, because the bus sends the lowest bit first. */
const reversedPolynomial = 0x8c;

/**
 * CRC-8 of the one-wire bus: polynomial x⁸ + x⁵ + x⁴ + 1, start value 0, lowest bit first. Over a record with its
 * own CRC at the end the result is 0.
 *
 * @param bytes any number of whole numbers 0 … 255
 * @returns checksum, 0 … 255
 *
 * Source: Maxim application note 27; the check value of "123456789" is 0xA1 (CRC-8/MAXIM-DOW in the RevEng catalogue).
 *
 * @example
 * oneWireCrc8([0x02, 0x1c, 0xb8, 0x01, 0x00, 0x00, 0x00]) // => 162
 * oneWireCrc8([...'123456789'].map((digit) => digit.charCodeAt(0))) // => 161
 */
export function oneWireCrc8(bytes: Iterable<number>): number {
  let remainder = 0;
  for (const byte of bytes) {
    remainder ^= byte & 0xff;
    for (let bit = 0; bit < 8; bit += 1) {
      remainder = remainder & 1 ? (remainder >>> 1) ^ reversedPolynomial : remainder >>> 1;
    }
  }
  return remainder;
}
