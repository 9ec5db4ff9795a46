import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  createLogScanner,
  type DamagedStretch,
  defaultRunSettings,
  encodeRecord,
  firstPreviousChecksum,
  type LogBody,
  type ScannedItem,
} from '#shared-core';
import { longestRecordBytes } from '../../../shared-core/run-log/log-scanner.ts';

const bodies: readonly LogBody[] = [
  {
    kind: 'header',
    header: {
      format: 'still-head-run-log',
      version: 1,
      runId: '20250314T101500Z',
      startedAtIso: '2025-03-14T10:15:00.000Z',
      settings: { ...defaultRunSettings, name: 'Gärung – Birne 🍐' },
      appVersion: '0.1.0',
      modelVersion: '1',
      timeScale: 1,
      rehearsal: false,
      source: null,
      origin: 'recorded',
    },
  },
  { kind: 'readings', readings: [[0.5, 'head', 21.375]] },
  {
    kind: 'readings',
    readings: [
      [1.5, 'head', 85, '°C', 'suspect'],
      [1.5, 'receiver', 3.1, 'g'],
    ],
  },
  { kind: 'mark', timeS: 2, markId: 1, mark: { type: 'note', text: 'Quoted "words"\n\u2028 µ' } },
  { kind: 'link', timeS: 3, state: 'lost', reason: 'unplugged' },
  { kind: 'clock', timeS: 3, sleptS: 0, wallStepS: -3600 },
  { kind: 'end', timeS: 4, how: 'clean' },
];

function write(written: readonly LogBody[]): readonly string[] {
  let previous = firstPreviousChecksum;
  return written.map((body, seq) => {
    const stamp = { seq, monoS: 100 + seq, wallMs: 1_741_947_300_000 + seq };
    const { line, checksum } = encodeRecord(body, stamp, previous);
    previous = checksum;
    return line;
  });
}

const lines = write(bodies);
const log = lines.join('');

interface Scan {
  readonly items: readonly ScannedItem[];
  readonly torn: DamagedStretch | null;
}

function scan(text: string, pieceLength = text.length || 1): Scan {
  const scanner = createLogScanner();
  const items: ScannedItem[] = [];
  for (let start = 0; start < text.length; start += pieceLength) {
    items.push(...scanner.push(text.slice(start, start + pieceLength)));
  }
  return { items, torn: scanner.end() };
}

const recordsIn = ({ items }: Scan) =>
  items.flatMap((item) => (item.kind === 'record' ? [item.record] : []));
const isClean = ({ items, torn }: Scan) =>
  torn === null && items.every(({ kind }) => kind === 'record');

describe('createLogScanner', () => {
  test('gives back every record as it was written, in pieces of any length', () => {
    for (const pieceLength of [1, 7, 64, log.length]) {
      const found = scan(log, pieceLength);
      expect(recordsIn(found).map(({ body }) => body)).toEqual(bodies);
      expect(isClean(found)).toBe(true);
    }
  });

  test('writes ASCII only, whatever people type', () => {
    expect(log).toMatch(/^[\n\x20-\x7e]*$/);
  });

  test('keeps every whole record and reports the rest, cut at any byte', () => {
    const ends = lines.map((_, index) => lines.slice(0, index + 1).join('').length);
    for (let cut = 0; cut <= log.length; cut += 1) {
      const whole = ends.filter((end) => end <= cut);
      const lastEnd = whole.at(-1) ?? 0;
      const found = scan(log.slice(0, cut));
      expect(recordsIn(found)).toHaveLength(whole.length);
      expect(found.torn).toEqual(
        cut === lastEnd ? null : { offset: lastEnd, bytes: cut - lastEnd },
      );
    }
  });

  test('notices every flip of a single bit and loses only the record it touches', () => {
    const short = bodies.slice(1);
    const text = write(short).join('');
    for (let position = 0; position < text.length; position += 1) {
      for (let bit = 0; bit < 8; bit += 1) {
        const flipped = String.fromCharCode(text.charCodeAt(position) ^ (1 << bit));
        const found = scan(text.slice(0, position) + flipped + text.slice(position + 1));
        const kept = recordsIn(found);
        const isRight = kept.every(({ stamp, body }) => isDeepStrictEqual(body, short[stamp.seq]));
        const holds = !isClean(found) && kept.length >= short.length - 1 && isRight;
        if (!holds) expect.fail(`bit ${bit} of byte ${position} went unnoticed`);
      }
    }
  });

  test('shows a lost, doubled or moved line by the broken chain', () => {
    const [header = '', first = '', second = '', ...rest] = lines;
    const lost = scan([header, second, ...rest].join(''));
    const doubled = scan([header, first, first, second, ...rest].join(''));
    const moved = scan([header, second, first, ...rest].join(''));
    for (const found of [lost, doubled, moved]) {
      expect(found.items.some(({ kind }) => kind === 'damage')).toBe(true);
    }
    expect(recordsIn(doubled).map(({ body }) => body)).toEqual(bodies);
  });

  test('never takes other bytes for a record', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), fc.nat(log.length), (bytes, at) => {
        const noise = String.fromCharCode(...bytes);
        const found = scan(log.slice(0, at) + noise + log.slice(at));
        for (const { stamp, body } of recordsIn(found)) expect(body).toEqual(bodies[stamp.seq]);
      }),
      { numRuns: 500, seed: 7 },
    );
  });

  test('reads on behind a line longer than any record, in bounded memory', () => {
    const [header = '', ...rest] = lines;
    const scanner = createLogScanner();
    const items = [...scanner.push(header)];
    const piece = 'x'.repeat(65_536);
    for (let written = 0; written < 3 * longestRecordBytes; written += piece.length) {
      items.push(...scanner.push(piece));
    }
    items.push(...scanner.push(`\n${rest.join('')}`));
    expect(items.map(({ kind }) => kind)).toEqual([
      'record',
      'damage',
      ...rest.map(() => 'record'),
    ]);
  });

  test.each([
    ['of a kind', { kind: 'hologram', timeS: 5, depth: 3 }],
    ['with a content', { kind: 'readings', readings: [[5, 'head', 78, '°C', 'excellent']] }],
  ])('keeps a record %s that only a newer version knows', (_, strange) => {
    const found = scan(write([...bodies.slice(0, 2), strange as unknown as LogBody]).join(''));
    expect(recordsIn(found).at(-1)?.body).toEqual({ kind: 'unknown' });
    expect(isClean(found)).toBe(true);
  });
});
