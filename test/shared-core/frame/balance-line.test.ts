import { describe, expect, test } from 'vitest';
import { createLineReader } from '../../../shared-core/frame/line-reader.ts';
import { parseBalanceLine } from '../../../shared-core/frame/parse-balance-line.ts';

/** Lines as balances of several makers send them, from memory of their manuals. */
const weighed: readonly (readonly [line: string, grams: number])[] = [
  ['   85.20 g', 85.2],
  ['85.20g', 85.2],
  ['+   85.20 g  ', 85.2],
  ['- 0.05 g', -0.05],
  ['N     +   85.20 g', 85.2],
  ['G     -  123.4  g', -123.4],
  ['S S      85.20 g', 85.2],
  ['S D      85.25 g', 85.25],
  ['ST,+00085.20  g', 85.2],
  ['US,+00085.25  g', 85.25],
  ['ST,GS,+  85.20 g', 85.2],
  ['    85.20 g    ?', 85.2],
  ['  85.20   g  S', 85.2],
  ['85.20 g NET', 85.2],
  ['Brutto: 85,20 g', 85.2],
  ['0.0852 kg', 85.2],
];

describe('a line of a balance', () => {
  test.each(weighed)('%j is a mass in the receiver', (line, grams) => {
    const reader = createLineReader({
      language: 'auto',
      unit: '°C',
      decimalComma: false,
      pattern: null,
    });
    expect(
      reader.read(line).values.map(({ channel, value, unit }) => ({ channel, value, unit })),
    ).toEqual([{ channel: 'receiver', value: grams, unit: 'g' }]);
  });

  test('is told by name, value and unit, also where the mass stands apart from its sign', () => {
    expect(['  -   0.05 g', '0,0852 KG', '  OL '].map(parseBalanceLine)).toEqual([
      { name: 'mass', value: -0.05, unit: 'g' },
      { name: 'mass', value: 0.0852, unit: 'kg' },
      { name: 'mass', value: null, unit: 'g' },
    ]);
  });

  test.each(['S +', 'S -', 'OL,+9999999  g', 'UL', 'H', 'S L'])(
    '%j says that it has no mass',
    (line) => {
      expect(parseBalanceLine(line)).toEqual({ name: 'mass', value: null, unit: 'g' });
    },
  );

  // A tare says nothing of what is in the receiver, and a half heard line nothing at all.
  test.each([
    'T +   85.20 g',
    'PT   12.00 g',
    '85.2 85.3 g',
    '78.42 C',
    '85.20',
    'S S 85.20 g 85',
    'x 85.20 g',
  ])('%j is none', (line) => {
    expect(parseBalanceLine(line)).toBeNull();
  });
});
