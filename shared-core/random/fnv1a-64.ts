const offsetBasis = 0xcbf29ce484222325n;
const prime = 0x100000001b3n;

/**
 * 64-bit FNV-1a hash of a text, over its UTF-16 code units (low byte, then high byte when not zero).
 *
 * For ASCII this is the hash of the bytes, so the published check values apply. Not cryptographic.
 *
 * Source: G. Fowler, L. C. Noll, K.-P. Vo, D. Eastlake, "The FNV Non-Cryptographic Hash Algorithm"
 * (IETF draft-eastlake-fnv), 64-bit offset basis and prime.
 */
export function fnv1a64(text: string): bigint {
  let hash = offsetBasis;
  for (let index = 0; index < text.length; index += 1) {
    const unit = text.charCodeAt(index);
    hash = mix(hash, unit & 0xff);
    if (unit > 0xff) hash = mix(hash, unit >>> 8);
  }
  return hash;
}

function mix(hash: bigint, byte: number): bigint {
  return BigInt.asUintN(64, (hash ^ BigInt(byte)) * prime);
}
