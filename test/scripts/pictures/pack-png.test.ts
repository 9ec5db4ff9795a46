import { crc32, deflateSync, inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { packPng } from '../../../scripts/pictures/pack-png.ts';

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

function chunk(type: string, data: Buffer): Buffer {
  const frame = Buffer.alloc(12 + data.length);
  frame.writeUInt32BE(data.length, 0);
  frame.write(type, 4, 'latin1');
  data.copy(frame, 8);
  frame.writeUInt32BE(crc32(frame.subarray(4, 8 + data.length)), 8 + data.length);
  return frame;
}

function pngOf(width: number, height: number, rows: readonly (readonly number[])[]): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const data = deflateSync(Buffer.from(rows.flat()));
  // In two parts, as large pictures come.
  const parts = [data.subarray(0, 5), data.subarray(5)].map((part) => chunk('IDAT', part));
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    ...parts,
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

// Two pixels a row, every row 10 20 30 then 40 60 250, each filtered by hand in another way.
const filtered = [
  [0, 10, 20, 30, 40, 60, 250],
  [1, 10, 20, 30, 30, 40, 220],
  [2, 0, 0, 0, 0, 0, 0],
  [3, 5, 10, 15, 15, 20, 110],
  [4, 0, 0, 0, 0, 0, 0],
];

test('a picture is written anew without filters and shows the same pixels', () => {
  const packed = packPng(pngOf(2, 5, filtered));
  const length = packed.readUInt32BE(33);
  const row = [0, 10, 20, 30, 40, 60, 250];
  expect([
    packed.subarray(0, 33),
    packed.toString('latin1', 37, 41),
    [...inflateSync(packed.subarray(41, 41 + length))],
    packed.subarray(45 + length),
  ]).toEqual([
    pngOf(2, 5, filtered).subarray(0, 33),
    'IDAT',
    [row, row, row, row, row].flat(),
    chunk('IEND', Buffer.alloc(0)),
  ]);
});

test('a picture of another kind is refused, not spoilt', () => {
  const grey = pngOf(2, 5, filtered);
  grey[25] = 0;
  expect(() => packPng(grey)).toThrow('Only plain 8-bit RGB');
});
