import { describe, expect, test } from 'vitest';
import { createLineReader } from '#shared-core';
import { parseJsonLine } from '../../../shared-core/frame/parse-json-line.ts';

const reader = () =>
  createLineReader({ language: 'json-lines', unit: '°C', decimalComma: false, pattern: null });

function read(line: string): readonly string[] {
  return reader()
    .read(line)
    .values.map(({ channel, value, unit }) => `${channel} ${value} ${unit}`);
}

describe('a line of JSON', () => {
  test.each([
    ['{"head":78.42}', ['head 78.42 °C']],
    ['{"temperature":78.42,"unit":"C"}', ['head 78.42 °C']],
    ['{"head":78.42,"pot":91.3,"ms":123456}', ['head 78.42 °C', 'pot 91.3 °C']],
    ['{"channel":"pot","value":91.3,"unit":"C"}', ['pot 91.3 °C']],
    ['{"sensor":"pot","temperature":91.3}', ['pot 91.3 °C']],
    ['{"name":"board 7","head":78.42,"pot":91.3}', ['head 78.42 °C', 'pot 91.3 °C']],
    ['{"probe":{"head":78.42,"pot":91.3}}', ['head 78.42 °C', 'pot 91.3 °C']],
    ['[78.42,91.3]', ['channel-1 78.42 1', 'channel-2 91.3 1']],
    [
      '[{"name":"head","value":78.42},{"name":"pot","value":91.3}]',
      ['head 78.42 °C', 'pot 91.3 °C'],
    ],
    ['{"head":"78.42 C","ok":true,"note":"fine"}', ['head 78.42 °C']],
    ['{"head":nan,"pot":91.3}', ['pot 91.3 °C']],
    ['{"head":null,"pot":91.3}', ['pot 91.3 °C']],
    ['{"head":78.42,"receiver":41.2}', ['head 78.42 °C', 'receiver 41.2 g']],
  ])('%s gives its readings', (line, expected) => {
    expect(read(line)).toEqual(expected);
  });

  test.each([
    '{"head":78.4',
    '{"head":}',
    '{}',
    '[]',
    'null',
    'true',
    '"78.42"x',
    '{"ms":12}',
    '{"head":{"head":{"head":"text"}}}',
    '[1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17]',
    '{"__proto__":{"x":"y"}}',
  ])('%s gives no reading', (line) => {
    expect(reader().read(line).values).toEqual([]);
  });

  test('nests as deeply as a line is long without harm', () => {
    expect(parseJsonLine(`${'['.repeat(250)}78.42${']'.repeat(250)}`)).toEqual({
      ok: true,
      value: [{ name: null, value: 78.42, unit: null }],
    });
  });
});
