const polynomial = 0x82f63b78;

const table = new Int32Array(256).map((_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) {
    remainder = (remainder & 1) === 1 ? (remainder >>> 1) ^ polynomial : remainder >>> 1;
  }
  return remainder;
});

/**
 * CRC-32C (Castagnoli) of a text in which each character stands for one byte (codes 0–255), or of
 * its first `length` characters.
 *
 * Reflected polynomial 0x82f63b78, initial value and final exclusive-or 0xffffffff. It finds every
 * single and double bit error and every burst of up to 32 bits in lines of the lengths used here.
 * Source: RFC 3720 (iSCSI), section 12.1 and appendix B.4; check value of "123456789" from memory.
 *
 * @example
 * crc32c('123456789').toString(16) // => "e3069283"
 * crc32c('') // => 0
 */
export function crc32c(bytesAsText: string, length: number = bytesAsText.length): number {
  // Signed from beginning to end, as the operators on bits have it: where a number that is not appears, the compiled loop is
  // given up, at every call anew.
  let remainder = -1;
  for (let index = 0; index < length; index += 1) {
    remainder =
      (remainder >>> 8) ^ (table[(remainder ^ bytesAsText.charCodeAt(index)) & 0xff] as number);
  }
  const signed = ~remainder;
  return signed < 0 ? signed + 2 ** 32 : signed;
}
