import { Buffer } from 'node:buffer';
import { crc32, deflateSync, inflateSync } from 'node:zlib';

/**
 * Writes an RGB picture anew, unfiltered and deflated as hard as it goes. A browser's screenshots are filtered for photographs;
 * flat areas of a window come out a quarter smaller without. Every pixel stays.
 *
 * Source: W3C, "Portable Network Graphics (PNG) Specification", third edition, sections 5, 9 and 11.2.
 */
export function packPng(png: Buffer): Buffer {
  const chunks = chunksOf(png);
  const header = chunks.find(({ type }) => type === 'IHDR')?.data;
  if (header === undefined || header[8] !== 8 || header[9] !== 2 || header[12] !== 0) {
    throw new Error('Only plain 8-bit RGB pictures are packed.');
  }
  const parts = chunks.filter(({ type }) => type === 'IDAT').map(({ data }) => data);
  const rows = unfilter(inflateSync(Buffer.concat(parts)), header.readUInt32BE(0));
  return Buffer.concat([
    png.subarray(0, 8),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

const bytesPerPixel = 3;

/** Undoes the filter of each row and says so in its first byte. */
function unfilter(filtered: Buffer, width: number): Buffer {
  const length = width * bytesPerPixel + 1;
  const rows = Buffer.from(filtered);
  for (let start = 0; start < rows.length; start += length) {
    const filter = rows[start]!;
    rows[start] = 0;
    for (let at = start + 1; at < start + length; at += 1) {
      const isFirst = at - start <= bytesPerPixel;
      const left = isFirst ? 0 : rows[at - bytesPerPixel]!;
      const above = start === 0 ? 0 : rows[at - length]!;
      const aboveLeft = isFirst || start === 0 ? 0 : rows[at - length - bytesPerPixel]!;
      rows[at] = rows[at]! + predicted(filter, left, above, aboveLeft);
    }
  }
  return rows;
}

function predicted(filter: number, left: number, above: number, aboveLeft: number): number {
  switch (filter) {
    case 0:
      return 0;
    case 1:
      return left;
    case 2:
      return above;
    case 3:
      return Math.floor((left + above) / 2);
    case 4:
      return nearest(left, above, aboveLeft);
    default:
      throw new Error(`There is no PNG filter ${filter}.`);
  }
}

/** The Paeth predictor. */
function nearest(left: number, above: number, aboveLeft: number): number {
  const guess = left + above - aboveLeft;
  const [toLeft, toAbove, toAboveLeft] = [left, above, aboveLeft].map((byte) =>
    Math.abs(guess - byte),
  ) as [number, number, number];
  if (toLeft <= toAbove && toLeft <= toAboveLeft) return left;
  return toAbove <= toAboveLeft ? above : aboveLeft;
}

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
}

function chunksOf(png: Buffer): readonly Chunk[] {
  const chunks: Chunk[] = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    chunks.push({ type, data: png.subarray(at + 8, at + 8 + length) });
    at += 12 + length;
  }
  return chunks;
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}
