import { describe, expect, test } from 'vitest';
import { type ColumnMapping, explainCsvProblem, readReadingsCsv } from '#shared-core';

const file =
  'Messung 7\r\nLauf;Fühler A;Fühler B\r\n;;\r\n0,0;77,0;20,1\r\n0,5;172,4;20,3\r\nkaputt;172,4;20,3\r\n1,0;173,0;\r\n';
const mapping: ColumnMapping = {
  delimiter: ';',
  time: { column: 'Lauf', unit: 'min' },
  channels: [
    { column: 'Fühler A', channel: 'head', unit: '°F' },
    { column: 3, channel: 'room', unit: '°C' },
  ],
};

describe('readReadingsCsv with a column mapping', () => {
  test('reads what the person says, converts units, keeps gaps and reports bad rows by line', () => {
    const read = readReadingsCsv(file, mapping);
    if (!read.ok) throw new Error(read.error.kind);
    expect(
      read.value.inputs.map((input) =>
        input.kind === 'reading'
          ? [input.timeS, input.channel, Math.round(10 * input.value) / 10, input.unit]
          : input.kind,
      ),
    ).toEqual([
      [0, 'head', 25, '°C'],
      [0, 'room', 20.1, '°C'],
      [30, 'head', 78, '°C'],
      [30, 'room', 20.3, '°C'],
      [60, 'head', 78.3, '°C'],
    ]);
    expect(read.value.rejectedRows).toEqual([{ line: 6, reason: '"kaputt" is no time' }]);
  });

  test.each<[string, ColumnMapping, RegExp]>([
    [
      'a column that is not there',
      { ...mapping, time: { column: 'Zeit' } },
      /no column "Zeit" among/,
    ],
    ['a number beyond the last column', { ...mapping, time: { column: 9 } }, /no column "9"/],
    [
      'a unit that nobody knows',
      { ...mapping, channels: [{ column: 2, channel: 'head', unit: 'furlong' }] },
      /"furlong" is no unit/,
    ],
    [
      'a time column without times',
      {
        ...mapping,
        delimiter: '|',
        time: { column: 1 },
        channels: [{ column: 1, channel: 'head' }],
      },
      /No time can be read in the column "1"/,
    ],
  ])('answers %s in a sentence', (_, wrong, sentence) => {
    const read = readReadingsCsv(file, wrong);
    expect(read.ok ? '' : explainCsvProblem(read.error)).toMatch(sentence);
  });
});

describe('hostile files', () => {
  test('a million bad rows are counted, not kept', () => {
    const read = readReadingsCsv(`time_s,head_degC\n0,20\n1,21\n${'x,y\n'.repeat(1_000_000)}`);
    if (!read.ok) throw new Error(read.error.kind);
    expect(read.value.rejectedRows).toHaveLength(10_001);
    expect(read.value.rejectedRows.at(-1)).toEqual({
      line: 1_000_003,
      reason: 'here end 990000 more rows or values that could not be used',
    });
  });
});
