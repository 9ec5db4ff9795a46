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

  test.each([
    ['{"probe":[78.42,91.3]}', 'probe-1', 78.42, 'probe-2', 91.3],
    ['{"probe":{"value":78.42},"other":{"reading":91.3}}', 'probe', 78.42, 'other', 91.3],
    ['[{"sensor":"a","val":1},{"channel":"b","value":2}]', 'a', 1, 'b', 2],
    ['{"name":5,"pot":91.3}', 'name', 5, 'pot', 91.3],
    ['{"a":null,"b": -NaN}', 'a', null, 'b', null],
    ['{"a":"open","b":[ inf]}', 'a', null, 'b-1', null],
  ])('%s names its values by the nearest word that says something', (line, ...told) => {
    const read = parseJsonLine(line);
    expect(read.ok && read.value.flatMap(({ name, value }) => [name, value])).toEqual(told);
  });

  test.each([
    ['{"unit":"F","head":172.4,"pot":"91.3 C"}', ['°F', '°C']],
    ['{"units":"K","head":{"value":351},"pot":null}', ['K', null]],
    ['{"head":{"value":1,"unit":"K"},"pot":{"value":"2"},"unit":"C"}', ['K', '°C']],
    ['{"unit":"parsec","head":78.42}', [null]],
  ])(
    '%s: a unit holds for all that lies within, unless another one stands nearer',
    (line, units) => {
      const read = parseJsonLine(line);
      expect(
        read.ok && read.value.filter(({ value }) => value !== null).map(({ unit }) => unit),
      ).toEqual(units.filter((unit) => unit !== null || units.length === 1));
    },
  );

  test('holds sixteen values at most; one more, or none, is not understood and told as it was heard', () => {
    const line = (count: number) => JSON.stringify(Array.from({ length: count }, (_, at) => at));
    const most = parseJsonLine(line(16));
    expect(most.ok && most.value.map(({ value }) => value)).toEqual(JSON.parse(line(16)));
    for (const text of [line(17), line(0), '{"head":78.', 'nanometre'])
      expect(parseJsonLine(text)).toEqual({ ok: false, error: { kind: 'not-understood', text } });
  });

  test('nests as deeply as a line is long without harm', () => {
    expect(parseJsonLine(`${'['.repeat(250)}78.42${']'.repeat(250)}`)).toEqual({
      ok: true,
      value: [{ name: null, value: 78.42, unit: null }],
    });
  });
});
