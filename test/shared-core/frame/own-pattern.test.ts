import { describe, expect, test } from 'vitest';
import { compilePattern, previewPattern } from '#shared-core';
import { matchPattern } from '../../../shared-core/frame/own-pattern.ts';

function matched(pattern: string, line: string, decimalComma = false) {
  const compiled = compilePattern(pattern);
  if (!compiled.ok) return compiled.error;
  const found = matchPattern(compiled.value, line, decimalComma);
  return found.ok ? found.value.map(({ name, value }) => `${name} ${value}`) : found.error.kind;
}

describe('a pattern of the person', () => {
  test.each([
    ['{head}', '78.42', ['head 78.42']],
    ['T1 {head} C', 'T1   78.42 C', ['head 78.42']],
    ['T1={head};T2={pot}', 'T1=78.42;T2=91.3', ['head 78.42', 'pot 91.3']],
    ['{anything} {head}', '12:30:07 78.42', 'not-understood'],
    ['{anything} T {head}', '12:30:07 T 78.42', ['head 78.42']],
    ['{anything},{head},{anything}', '17,78.42,ok,1', ['head 78.42']],
    ['{head}{anything}', '78.42 and more', ['head 78.42']],
    ['{jacket-top} {head}', '60 78.42', ['jacket-top 60', 'head 78.42']],
  ])('%s on %j', (pattern, line, expected) => {
    expect(matched(pattern, line)).toEqual(expected);
  });

  test.each([
    ['T1 {head} C', 'T1 78.42 F'],
    ['T1 {head} C', 'T1 78.42 C 3'],
    ['T1 {head} C', 'T1 C'],
    ['T1 {head} C', ''],
    ['{head}', '78.42.1'],
    ['{head}', '1e999'],
    ['{head} {pot}', '78.42 1e999'],
    ['T1 {head}', 'OLD T1 78.42'],
    ['{head}', 'T 78.42'],
  ])('%s refuses %j', (pattern, line) => {
    expect(matched(pattern, line)).toBe('not-understood');
  });

  test.each([
    ['', 'no-channel'],
    ['T1', 'no-channel'],
    ['{anything}', 'no-channel'],
    ['{head', 'brace-not-closed'],
    ['head}', 'brace-not-closed'],
    ['{Head}', 'channel-name'],
    ['{head Q}', 'channel-name'],
    ['{head} {head}', 'channel-twice'],
    ['{anything}{anything}{head}', 'nothing-between'],
  ])('%j is told to be wrong: %s', (pattern, kind) => {
    const compiled = compilePattern(pattern);
    expect(compiled.ok ? null : compiled.error.kind).toBe(kind);
  });

  test.each([
    ['T1 head', 'Put the channel in braces where its number stands, such as {head}.'],
    ['T {pot} {he', 'The brace at position 9 is not closed.'],
    ['{pot} T }', 'The brace at position 9 is not closed.'],
    [
      '{head Q}',
      '{head Q} is no channel: use small letters, digits and hyphens, such as {head} or {head F}.',
    ],
    ['{head} {head F}', '{head} stands there twice.'],
    ['{anything} {anything} {head}', 'Two {anything} in a row: one is enough.'],
    [
      Array.from({ length: 17 }, (_, index) => `{c${index}}`).join(' '),
      'That is more channels than one line can hold.',
    ],
  ])('%j is explained: %s', (pattern, problem) => {
    expect(previewPattern(pattern, ['78.42'], { unit: '°C', decimalComma: false })).toEqual({
      problem,
      lines: [],
    });
  });

  test('may have as many channels as a line may have values', () => {
    const names = Array.from({ length: 16 }, (_, index) => `c${index}`);
    const pattern = names.map((name) => `{ ${name} }`).join(' ');
    expect(matched(pattern, names.map((_, index) => index).join(' '))).toEqual(
      names.map((name, index) => `${name} ${index}`),
    );
  });

  test('gives the unit that stands in its braces, and none where none stands', () => {
    const compiled = compilePattern('{head  deg  F} {pot}');
    const found = compiled.ok ? matchPattern(compiled.value, '172.4 91', false) : compiled;
    expect(found).toEqual({
      ok: true,
      value: [
        { name: 'head', value: 172.4, unit: '°F' },
        { name: 'pot', value: 91, unit: null },
      ],
    });
  });

  test.each([
    ['{head}', '-1', ['head -1']],
    ['{head}', '+7.842E+01', ['head 78.42']],
    ['{head}', '.5', ['head 0.5']],
    ['{head}', '78.', ['head 78']],
    ['a  {head}', '  a\t78', ['head 78']],
    ['{head}  C ', '78C', ['head 78']],
    ['a {anything} b {head}', 'a b 1', ['head 1']],
    ['{anything}{head} C', 'no 12 34 C', 'not-understood'],
    ['{anything} {head}', 'nothing', 'not-understood'],
    ['{anything} T {head}', 'nothing', 'not-understood'],
    ['{anything} {head} {anything}', '1 2 3', ['head 1']],
    ['{anything}{head}', '7', ['head 7']],
    ['{anything}{head}', 'no 7', ['head 7']],
    ['{anything} T {head}', 'T 7', ['head 7']],
    ['{anything} {head}', '  7', ['head 7']],
    ['a  b {head}', 'a b   7  ', ['head 7']],
    ['a b {head}', 'a   b 7', ['head 7']],
  ])('%s reads %j from left to right', (pattern, line, expected) => {
    expect(matched(pattern, line)).toEqual(expected);
  });

  test('takes a decimal comma when the person has said so', () => {
    expect(matched('T {head} C', 'T 78,42 C', true)).toEqual(['head 78.42']);
  });

  test('cannot be made slow by any line', () => {
    const pattern = Array.from({ length: 12 }, (_, index) => `{anything}a{c${index}}`).join('');
    expect(matched(pattern, 'a'.repeat(512))).toBe('not-understood');
  });

  test('is shown on what was heard while it is being written', () => {
    const heard = ['12:30:07 T1 172.4 F', 'booting'];
    expect(
      previewPattern('{anything} T1 {head F}{anything}', heard, {
        unit: '°C',
        decimalComma: false,
      }),
    ).toEqual({
      problem: null,
      lines: [
        {
          text: '12:30:07 T1 172.4 F',
          values: [
            {
              channel: 'head',
              value: expect.closeTo(78, 9),
              unit: '°C',
              quality: 'good',
              doubt: null,
            },
          ],
          because: null,
        },
        { text: 'booting', values: [], because: expect.stringContaining('booting') },
      ],
    });
  });
});
