import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkedLine,
  checksumOfLine,
  createLogScanner,
  encodeRecord,
  firstPreviousChecksum,
  inputsOfRecord,
  packReading,
  type Reading,
  unpackReading,
} from '#shared-core';
import { crc32c } from '../../../shared-core/run-log/crc-32c.ts';
import { decodeRecord } from '../../../shared-core/run-log/decode-record.ts';
import { longestRecordBytes } from '../../../shared-core/run-log/log-scanner.ts';
import { packedReadingSchema } from '../../../shared-core/run-log/packed-reading.ts';

const bytes = (of: (index: number) => number) =>
  String.fromCharCode(...Array.from({ length: 32 }, (_, index) => of(index)));

// RFC 3720, appendix B.4: the CRCs of 32 bytes each (there least significant byte first).
test.each([
  ['of zeroes', bytes(() => 0), 0x8a9136aa],
  ['of ones', bytes(() => 0xff), 0x62a8ab43],
  ['that count up', bytes((index) => index), 0x46dd794e],
  ['that count down', bytes((index) => 31 - index), 0x113fdb5c],
])(
  'the checksum of 32 bytes %s is the one of the standard, whatever follows them',
  (_, text, sum) => {
    expect([crc32c(text), crc32c(`${text}more`, 32)]).toEqual([sum, sum]);
  },
);

describe('a checked line', () => {
  test('is the object, its last field the checksum of all before it in eight digits', () => {
    const { line, checksum } = checkedLine({ kind: 'note', text: 'ä\u007f🍐' });
    const covered = '{"kind":"note","text":"\\u00e4\\u007f\\ud83c\\udf50"';
    expect(checksum).toBe(crc32c(covered).toString(16).padStart(8, '0'));
    expect(line).toBe(`${covered},"crc":"${checksum}"}\n`);
    expect(checksumOfLine(line.slice(0, -1))).toBe(checksum);
  });

  test('is not whole with its checksum in capitals, or with another digit in any place', () => {
    const { line, checksum } = checkedLine({ kind: 'note', text: 'a' });
    const start = line.indexOf(checksum, line.indexOf('"crc"'));
    const digits = [...'0123456789abcdef', ...'ABCDEF'];
    const taken = Array.from({ length: 8 }, (_, at) =>
      digits
        .filter((digit) => {
          const other = line.slice(0, start + at) + digit + line.slice(start + at + 1, -1);
          return checksumOfLine(other) !== null;
        })
        .join(''),
    );
    expect(taken).toEqual([...checksum]);
  });

  test('of any object is whole, eight digits also where the first is a nought, and not with another end', () => {
    let withNought = 0;
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.string(), { minKeys: 1 }), (value) => {
        const { line, checksum } = checkedLine(value);
        const whole = line.slice(0, -1);
        if (checksum.startsWith('0')) withNought += 1;
        expect([checksumOfLine(whole), checksum.length]).toEqual([checksum, 8]);
        expect(JSON.parse(whole)).toEqual({ ...value, crc: checksum });
        for (const other of [line, whole.slice(0, -1), `${whole.slice(0, -1)} `, `x${whole}`])
          expect(checksumOfLine(other)).toBeNull();
      }),
      { numRuns: 300, seed: 3 },
    );
    expect(withNought).toBeGreaterThan(0);
  });
});

const reading = (other: Partial<Reading> = {}): Reading => ({
  kind: 'reading',
  timeS: 1.5,
  channel: 'head',
  value: 78.4,
  unit: '°C',
  quality: 'good',
  ...other,
});

test('a reading is packed into as few fields as tell it, and comes back as it was', () => {
  const readings = [
    reading(),
    reading({ unit: 'g', channel: 'receiver' }),
    reading({ quality: 'suspect' }),
    reading({ unit: 'kPa', quality: 'bad' }),
  ];
  expect(readings.map(packReading)).toEqual([
    [1.5, 'head', 78.4],
    [1.5, 'receiver', 78.4, 'g'],
    [1.5, 'head', 78.4, '°C', 'suspect'],
    [1.5, 'head', 78.4, 'kPa', 'bad'],
  ]);
  expect(readings.map((one) => unpackReading(packReading(one)))).toEqual(readings);
});

// As JSON: a number that is too great for a number here becomes one without end.
test.each([
  ['no list', '"1,head,20"'],
  ['an object', '{ "length": 3 }'],
  ['no fields', '[]'],
  ['no value', '[1, "head"]'],
  ['a field too many', '[1, "head", 20, "°C", "good", 0]'],
  ['a time that is no number', '["1", "head", 20]'],
  ['a time before the run', '[-0.001, "head", 20]'],
  ['a time without end', '[1e999, "head", 20]'],
  ['a channel that is no text', '[1, 5, 20]'],
  ['a name that no channel has', '[1, "Head", 20]'],
  ['no name', '[1, "", 20]'],
  ['a value that is no number', '[1, "head", "20"]'],
  ['a value without end', '[1, "head", -1e999]'],
  ['a strange unit', '[1, "head", 20, "°F"]'],
  ['an empty unit', '[1, "head", 20, null]'],
  ['a strange quality', '[1, "head", 20, "°C", "best"]'],
  ['an empty quality', '[1, "head", 20, "°C", null]'],
])('a row with %s is no reading, however often it is met', (_, json) => {
  const isReading = () => packedReadingSchema.safeParse(JSON.parse(json)).success;
  expect([isReading(), isReading()]).toEqual([false, false]);
});

test.each([
  ['at the very beginning', '[0, "head", 20]'],
  ['below nought', '[1, "room", -4.5]'],
  ['of a channel with the longest name', `[1, "${'a'.repeat(32)}", 20]`],
  ['in another unit', '[1, "receiver", 31, "mL"]'],
  ['that is not good', '[1, "head", 85, "°C", "suspect"]'],
])('a row of a reading %s is one', (_, json) => {
  expect(packedReadingSchema.safeParse(JSON.parse(json)).data).toEqual(JSON.parse(json));
});

test('the monitor is given the readings, marks and links of a record, and nothing of any other', () => {
  const mark = { kind: 'mark', timeS: 2, markId: 1, mark: { type: 'heat-on' } } as const;
  const link = { kind: 'link', timeS: 3, state: 'lost', reason: 'unplugged' } as const;
  const bodies = [
    {
      kind: 'readings' as const,
      readings: [packReading(reading()), packReading(reading({ timeS: 2 }))],
    },
    mark,
    link,
    { kind: 'end', timeS: 4, how: 'clean' } as const,
    { kind: 'unknown' } as const,
  ];
  expect(bodies.map((body) => inputsOfRecord({ body }))).toEqual([
    [reading(), reading({ timeS: 2 })],
    [mark],
    [link],
    [],
    [],
  ]);
});

const body = { kind: 'label', name: 'Pear', notes: '' } as const;
const stamp = (seq: number) => ({ seq, monoS: 100.5 + seq, wallMs: 1_741_947_300_000 + seq });

test('a record is read back with its stamp, its checksum and the one before it', () => {
  const { line, checksum } = encodeRecord(body, stamp(7), 'cafe0123');
  expect(decodeRecord(line.slice(0, -1))).toEqual({
    record: { stamp: stamp(7), body },
    checksum,
    previousChecksum: 'cafe0123',
  });
});

test.each([
  ['no number', { prev: '00000000', monoS: 1, wallMs: 1, kind: 'label' }],
  ['a broken number', { seq: 0.5, prev: '00000000', monoS: 1, wallMs: 1, kind: 'label' }],
  ['a number below nought', { seq: -1, prev: '00000000', monoS: 1, wallMs: 1, kind: 'label' }],
  ['a short chain', { seq: 1, prev: '0000', monoS: 1, wallMs: 1, kind: 'label' }],
  ['no kind', { seq: 1, prev: '00000000', monoS: 1, wallMs: 1 }],
  ['no clock', { seq: 1, prev: '00000000', kind: 'label' }],
])('a whole line with %s is no record', (_, value) => {
  expect(decodeRecord(checkedLine(value).line.slice(0, -1))).toBeUndefined();
});

test('a line whose checksum is right but which is no JSON is no record', () => {
  const covered = '{"kind":';
  const sum = crc32c(covered).toString(16).padStart(8, '0');
  expect(decodeRecord(`${covered},"crc":"${sum}"}`)).toBeUndefined();
});

describe('what the scanner tells of damage', () => {
  const chain = (count: number) => {
    let previous = firstPreviousChecksum;
    return Array.from({ length: count }, (_, seq) => {
      const { line, checksum } = encodeRecord(body, stamp(seq), previous);
      previous = checksum;
      return line;
    });
  };
  const lines = chain(4);
  const [first = '', second = '', third = '', fourth = ''] = lines;
  const scan = (text: string) => {
    const scanner = createLogScanner();
    const items = scanner
      .push(text)
      .map((item) => (item.kind === 'damage' ? [item.offset, item.bytes] : item.record.stamp.seq));
    return [...items, scanner.end()];
  };

  test('is from which byte to which, right before the first record behind it', () => {
    const noise = 'half a li\nne\n';
    expect([
      scan(first + noise + second),
      scan(noise + first),
      scan(first + second + noise),
      scan(first + third),
      scan(first + second + second + third),
      scan(first + fourth + second + third),
      scan(''),
      scan(noise),
    ]).toEqual([
      [0, [first.length, noise.length], 1, null],
      [[0, noise.length], 0, null],
      [0, 1, { offset: first.length + second.length, bytes: noise.length }],
      [0, [first.length, 0], 2, null],
      [0, 1, [first.length + second.length, second.length], 2, null],
      [
        0,
        [first.length, 0],
        3,
        { offset: first.length + fourth.length, bytes: second.length + third.length },
      ],
      [null],
      [{ offset: 0, bytes: noise.length }],
    ]);
  });

  test('does not swallow a whole record behind a line feed that was lost', () => {
    const torn = second.slice(0, 30);
    expect(scan(first + torn + third + fourth)).toEqual([
      0,
      [first.length, torn.length],
      2,
      3,
      null,
    ]);
  });

  test('shows a record whose number was there before, even where its chain is right', () => {
    const again = (seq: number, before: string) =>
      encodeRecord(body, stamp(seq), checksumOfLine(before.slice(0, -1)) ?? '').line;
    const doubled = again(1, second);
    const goesOn = again(2, doubled);
    expect([scan(first + second + doubled), scan(first + second + again(0, second))]).toEqual([
      [0, 1, { offset: first.length + second.length, bytes: doubled.length }],
      [0, 1, { offset: first.length + second.length, bytes: doubled.length }],
    ]);
    expect(scan(first + second + doubled + goesOn)).toEqual([
      0,
      1,
      [first.length + second.length, doubled.length],
      2,
      null,
    ]);
  });

  describe('where a line is longer than any record', () => {
    const label = (notes: number) =>
      encodeRecord({ ...body, notes: 'x'.repeat(notes) }, stamp(0), firstPreviousChecksum);
    const shortest = label(0).line.length - 1;
    /** The recorder's files are read in pieces of 64 KiB. */
    const scanInPieces = (text: string) => {
      const scanner = createLogScanner();
      const items = [];
      for (let at = 0; at < text.length; at += 65_536)
        items.push(...scanner.push(text.slice(at, at + 65_536)));
      const told = items.map((item) =>
        item.kind === 'damage' ? [item.offset, item.bytes] : item.record.stamp.seq,
      );
      return [...told, scanner.end()];
    };

    test('the longest there may be is read, in pieces too', () => {
      const { line, checksum } = label(longestRecordBytes - shortest);
      expect(line.length - 1).toBe(longestRecordBytes);
      const next = encodeRecord(body, stamp(1), checksum).line;
      expect(scanInPieces(line + next)).toEqual([0, 1, null]);
    });

    test('it is damage from its first byte to its last, and the next record is read', () => {
      const { line, checksum } = label(3 * longestRecordBytes);
      const next = encodeRecord(body, stamp(1), checksum).line;
      expect(scanInPieces(line + next)).toEqual([[0, line.length], 1, null]);
      expect(scanInPieces(first + line.slice(0, -1))).toEqual([
        0,
        { offset: first.length, bytes: line.length - 1 },
      ]);
    });

    test('a whole record at its end, whose line feed before it was lost, is read', () => {
      const noise = 'x'.repeat(2 * longestRecordBytes);
      const scanner = createLogScanner();
      const told = [noise, first, second].flatMap((piece) => scanner.push(piece));
      expect(told.map(({ kind }) => kind)).toEqual(['damage', 'record', 'record']);
      expect(told[0]).toEqual({ kind: 'damage', offset: 0, bytes: noise.length });
    });
  });

  test('holds for the longest record there may be, and one byte more is given up', () => {
    const scanner = createLogScanner();
    const push = (text: string) => scanner.push(text).map(({ kind }) => kind);
    expect(push('x'.repeat(longestRecordBytes))).toEqual([]);
    expect(scanner.end()).toEqual({ offset: 0, bytes: longestRecordBytes });
    expect(push('x')).toEqual([]);
    expect(push(`y\n${first}`)).toEqual(['damage', 'record']);
    expect(scanner.end()).toBeNull();
  });
});
