import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MarkCell, readMarkCell, writeMarkCell } from '../../../shared-core/csv/mark-cell.ts';
import { writeCsvRow } from '../../../shared-core/csv/write-csv-row.ts';

const cells: readonly (readonly [string, MarkCell])[] = [
  ['run-ended', { kind: 'end' }],
  ['heat-on', { kind: 'mark', mark: { type: 'heat-on' } }],
  ['probe-lost reason=silent', { kind: 'link', change: { state: 'lost', reason: 'silent' } }],
  [
    'probe-back reason=computer-asleep',
    { kind: 'link', change: { state: 'back', reason: 'computer-asleep' } },
  ],
  [
    'receiver-changed volumeMl=null',
    { kind: 'mark', mark: { type: 'receiver-changed', volumeMl: null } },
  ],
  [
    'strength-read alcoholByVolume=91.5 sampleTemperatureC=-2',
    {
      kind: 'mark',
      mark: { type: 'strength-read', alcoholByVolume: 91.5, sampleTemperatureC: -2 },
    },
  ],
  ['note text="null"', { kind: 'mark', mark: { type: 'note', text: 'null' } }],
  ['note text=pear', { kind: 'mark', mark: { type: 'note', text: 'pear' } }],
  ['note text="say \\"hi\\" = 3"', { kind: 'mark', mark: { type: 'note', text: 'say "hi" = 3' } }],
];

describe('a mark in a cell', () => {
  test('is its type and then what it holds', () => {
    for (const [text, cell] of cells) {
      expect(writeMarkCell(cell)).toBe(text);
      expect(readMarkCell(text)).toEqual(cell);
    }
  });

  test('has the decimal sign of its table, and is read with either', () => {
    const cell: MarkCell = { kind: 'mark', mark: { type: 'volume-read', volumeMl: 12.5 } };
    expect(writeMarkCell(cell, ',')).toBe('volume-read volumeMl=12,5');
    expect(readMarkCell('volume-read volumeMl=12,5')).toEqual(cell);
    expect(readMarkCell('  volume-read   volumeMl=12.5  ')).toEqual(cell);
    expect(readMarkCell('volume-read volumeMl=1,25e1')).toEqual(cell);
    const noted: MarkCell = { kind: 'mark', mark: { type: 'note', text: '1,5 mL' } };
    expect(readMarkCell(writeMarkCell(noted, ','))).toEqual(noted);
  });

  test('is none where anything in it cannot be understood', () => {
    for (const text of [
      '',
      'heat-on now',
      'heat-up',
      'volume-read',
      'volume-read volumeMl=much',
      'volume-read volumeMl=12 extra=1',
      'volume-read volumeMl=12 rest',
      'probe-lost',
      'probe-lost reason=boredom',
      'probe-found reason=silent',
      'note text="open',
      'Heat-on',
    ]) {
      expect([text, readMarkCell(text)]).toEqual([text, undefined]);
    }
  });

  test('whatever a note says, it is read as it was written', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 60 }), (text) => {
        const cell: MarkCell = { kind: 'mark', mark: { type: 'note', text } };
        for (const decimal of ['.', ','] as const) {
          expect(readMarkCell(writeMarkCell(cell, decimal))).toEqual(cell);
        }
      }),
    );
  });
});

describe('a row of a table', () => {
  const comma = { delimiter: ',', decimal: '.' } as const;
  const semicolon = { delimiter: ';', decimal: ',' } as const;

  test('quotes what would end a field, and only that', () => {
    expect(writeCsvRow([1.5, null, 'a,b', 'c;d', 'e"f', 'g\nh', 'i'], comma)).toBe(
      '1.5,,"a,b",c;d,"e""f","g\nh",i\r\n',
    );
    expect(writeCsvRow([1.5, -2, 1e-7, 'a,b', 'c;d', 'r\rs'], semicolon)).toBe(
      '1,5;-2;1e-7;a,b;"c;d";"r\rs"\r\n',
    );
    expect(writeCsvRow([], comma)).toBe('\r\n');
  });

  test('gives no spreadsheet a formula to run', () => {
    expect(writeCsvRow(['=1', '+1', '-1', '@x', '\tx', '\rx', 'a=1', -1], comma)).toBe(
      "'=1,'+1,'-1,'@x,'\tx,\"'\rx\",a=1,-1\r\n",
    );
  });
});
