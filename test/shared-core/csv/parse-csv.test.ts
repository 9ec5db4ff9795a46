import { describe, expect, test } from 'vitest';
import { detectDelimiter } from '../../../shared-core/csv/detect-delimiter.ts';
import { parseCsv } from '../../../shared-core/csv/parse-csv.ts';

const rows = (text: string, delimiter: Parameters<typeof parseCsv>[1] = ',') =>
  [...parseCsv(text, delimiter)].map(({ line, cells }) => [line, ...cells]);

describe('the records of a table', () => {
  test('have the line that they begin on, whatever ends a line; blank lines count and are skipped', () => {
    expect(rows('a,b\r\nc,d\n\n , \ne,f\rg,h')).toEqual([
      [1, 'a', 'b'],
      [2, 'c', 'd'],
      [5, 'e', 'f'],
      [6, 'g', 'h'],
    ]);
    expect(rows('')).toEqual([]);
    expect(rows('\ufeffa,b')).toEqual([[1, 'a', 'b']]);
    expect(rows('a,\n,b\n')).toEqual([
      [1, 'a', ''],
      [2, '', 'b'],
    ]);
  });

  test('may have delimiters, quotes and line ends in quoted fields, which count as lines', () => {
    expect(rows('"a,1","say ""hi""","x\r\ny\nz\rq"\nb,c')).toEqual([
      [1, 'a,1', 'say "hi"', 'x\r\ny\nz\rq'],
      [5, 'b', 'c'],
    ]);
    expect(rows('"",a\n"b"')).toEqual([
      [1, '', 'a'],
      [2, 'b'],
    ]);
  });

  test('keep a quote that stands within a field or is never closed for what it is', () => {
    expect(rows('5" pipe,b\n"open,c\nd,e')).toEqual([
      [1, '5" pipe', 'b'],
      [2, '"open', 'c'],
      [3, 'd', 'e'],
    ]);
    expect(rows('"a"b,c')).toEqual([[1, '"a"b', 'c']]);
  });

  test('are not swallowed by a stray quote that closes far below', () => {
    const far = `"stray,1\n${'a,b\n'.repeat(6000)}"`;
    expect(rows(far).length).toBeGreaterThan(6000);
    const near = `"${'a'.repeat(19_000)}",b`;
    expect(rows(near)).toEqual([[1, 'a'.repeat(19_000), 'b']]);
  });

  test('may be set apart by any number of spaces, before the first and behind the last as well', () => {
    expect(rows('  0   21.5  \n 10 22\n', ' ')).toEqual([
      [1, '0', '21.5'],
      [2, '10', '22'],
    ]);
    expect(rows('a b ', ' ')).toEqual([[1, 'a', 'b']]);
  });

  test('have 500 fields at most', () => {
    const [only = []] = rows(Array.from({ length: 520 }, (_, index) => index).join(','));
    expect(only.length).toBe(501);
    expect(only.at(-1)).toBe('499');
  });
});

describe('what separates the fields', () => {
  test.each([
    [';', 't;T\n0,5;21,3\n1,0;21,4\n'],
    [',', 't,T\n0.5,21.3\n'],
    ['\t', 't\tT\n0,5\t21,3\n'],
    ['|', 't|T\n0,5|21,3\n0,6|21,4\n'],
    [' ', 't T\n0.5 21.3\n1.0 21.4\n'],
    [',', 'a remark; and another\na; b\nt,T\n0,1\n1,2\n2,3\n3,4\n'],
    [',', ''],
    [',', 'column\n1\n2\n'],
  ] as const)('is "%s" in %j', (delimiter, text) => {
    expect(detectDelimiter(text)).toBe(delimiter);
  });

  test('is told by the first forty rows', () => {
    const comma = 'a,b\n'.repeat(40);
    expect(detectDelimiter(`${comma}${'a;b;c\n'.repeat(500)}`)).toBe(',');
  });
});
