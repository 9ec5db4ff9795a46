import { Buffer } from 'node:buffer';
import type { Result, ServiceProblem } from '#shared-core';
import type { Hands } from './hands.ts';

/** What is made is fetched piece by piece, has the length that was told, and is dropped; null where it could not be had. */
export async function fetchPack(
  { ask, fresh, judge }: Hands,
  make: (packId: string) => Promise<Result<{ readonly bytes: number }, ServiceProblem>>,
): Promise<Buffer | null> {
  const packId = `pack-${fresh()}`;
  const made = await make(packId);
  if (!made.ok) return null;
  const pieces: Buffer[] = [];
  for (let next: number | null = 0; next !== null; ) {
    const read: Awaited<ReturnType<typeof ask<'packs/read'>>> = await ask('packs/read', {
      packId,
      fromByte: next,
    });
    if (!read.ok) return null;
    pieces.push(Buffer.from(read.value.base64, 'base64'));
    next = read.value.nextByte;
  }
  await ask('packs/drop', { packId });
  const pack = Buffer.concat(pieces);
  if (pack.length !== made.value.bytes) {
    judge.violated('pack-is-whole', `${pack.length} bytes of ${made.value.bytes}.`);
  }
  return pack;
}
