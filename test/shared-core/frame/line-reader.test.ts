import { describe, expect, test } from 'vitest';
import { createLineReader } from '#shared-core';
import type { LineReaderOptions } from '../../../shared-core/frame/line-reader.ts';

const defaults: LineReaderOptions = {
  language: 'auto',
  unit: '°C',
  decimalComma: false,
  pattern: null,
};

function read(line: string, options: Partial<LineReaderOptions> = {}) {
  const outcome = createLineReader({ ...defaults, ...options }).read(line);
  return {
    values: outcome.values.map(
      ({ channel, value, unit, quality }) =>
        `${channel} ${Number(value.toFixed(4))} ${unit}${quality === 'good' ? '' : ` ${quality}`}`,
    ),
    rejected: outcome.rejections.map(({ kind }) => kind),
  };
}

const good = (...values: string[]) => ({ values, rejected: [] });
const rejected = (...kinds: string[]) => ({ values: [], rejected: kinds });

describe('a channel under another name', () => {
  test('takes the units of what it is: a balance without a name gives a mass, a barometer a pressure', () => {
    expect([
      read('   85.20 g', { channels: { head: 'receiver' } }),
      read('0.0852 kg', { channels: { head: 'receiver' } }),
      read('994.1 hPa', { channels: { head: 'air-pressure' } }),
      read('78.4 91.3', { channels: { 'channel-1': 'pot', 'channel-2': 'head' } }),
    ]).toEqual([
      good('receiver 85.2 g'),
      good('receiver 85.2 g'),
      good('air-pressure 99.41 kPa'),
      good('pot 78.4 °C', 'head 91.3 °C'),
    ]);
  });
});

describe('a line of plain text', () => {
  test.each([
    ['78.42', good('head 78.42 °C')],
    ['  78.42  ', good('head 78.42 °C')],
    ['T=78.42', good('head 78.42 °C')],
    ['Temperature: 78.42 C', good('head 78.42 °C')],
    ['78.42 \u00b0C', good('head 78.42 °C')],
    ['78.42 \u00c2\u00b0C', good('head 78.42 °C')],
    ['78.42,C', good('head 78.42 °C')],
    ['172.4 F', good('head 78 °C')],
    ['351.15 K', good('head 78 °C')],
    ['head,78.42,pot,91.3', good('head 78.42 °C', 'pot 91.3 °C')],
    ['head=78.42 pot=91.3', good('head 78.42 °C', 'pot 91.3 °C')],
    ['T1: 78.42; T2: 91.3', good('head 78.42 °C', 'pot 91.3 °C')],
    ['time;78,4', good('time 78.4 1')],
    ['10:15:22;78,4', good('head 78.4 °C')],
    ['10:15:22,78.4', good('head 78.4 °C')],
    ['2025-03-14 10:15:22.5;78,4', good('head 78.4 °C')],
    ['14.03.2025 10:15 78.4', good('head 78.4 °C')],
    ['$TEMP,78.4*35', good('head 78.4 °C')],
    ['$TEMP,78.4', good('head 78.4 °C')],
    ['Kopf: 78,35 °C; Sumpf: 91,2 °C', good('head 78.35 °C', 'pot 91.2 °C')],
    ['78,35 \u00c2\u00b0C', good('head 78.35 °C')],
    ['78,42;91,3', good('channel-1 78.42 1', 'channel-2 91.3 1')],
    ['head,78.42,receiver,41.2', good('head 78.42 °C', 'receiver 41.2 g')],
    ['head,78.42,mass,0.0412 kg', good('head 78.42 °C', 'receiver 41.2 g')],
    ['head,78.42,pressure,986', good('head 78.42 °C', 'air-pressure 98.6 kPa')],
    ['head,78.42,jacket top,60 C', good('head 78.42 °C', 'jacket-top 60 °C')],
    ['7.842e1', good('head 78.42 °C')],
  ])('%j gives its readings', (line, expected) => {
    expect(read(line)).toEqual(expected);
  });

  test.each([
    ['H:78.35;P:91.35;CK=76', ['h', 'p', 'ck']],
    ['n,78.29,91.29,512', ['n', 'channel-2', 'channel-3']],
    ['17,78.29,91.29,512', ['channel-1', 'channel-2', 'channel-3', 'channel-4']],
    ['78.42\t91.3', ['channel-1', 'channel-2']],
    ['probe7 = 78.42', ['probe7']],
    ['Sensor 0: 28FF641E83: 78.37', ['sensor-0-28ff641e83']],
    ['Sensor 1: <28FF641E84>: 91.2', ['sensor-1-28ff641e84']],
    ['{"a": 78.4, "b": 91.2}', ['a', 'b']],
  ])('%j is understood, but nothing in it is taken for the head', (line, channels) => {
    const { values, rejections } = createLineReader(defaults).read(line);
    expect([values.map(({ channel }) => channel), rejections]).toEqual([channels, []]);
  });

  test.each([
    ['-127.00', ['head -127 °C bad']],
    ['-127', ['head -127 °C bad']],
    ['150.1', ['head 150.1 °C bad']],
    ['-55.1', ['head -55.1 °C bad']],
    ['778.42', ['head 778.42 °C bad']],
    ['1e300', ['head 1e+300 °C bad']],
  ])('%j is kept as a bad reading', (line, values) => {
    expect(read(line)).toEqual({ values, rejected: [] });
  });

  test.each([
    ['nan', 'no-value'],
    ['T=NaN', 'no-value'],
    ['-nan', 'no-value'],
    ['inf', 'no-value'],
    ['78,42', 'ambiguous-comma'],
    ['T=78,42', 'ambiguous-comma'],
    ['$TEMP,78.4*5A', 'checksum'],
    ['$TEMP,79.4*35', 'checksum'],
    ['78.78.42', 'not-understood'],
    ['78.4\u0000', 'not-understood'],
    ['\u00f8\u0080\u00ff', 'not-understood'],
    ['7 8.42x', 'not-understood'],
    ['0x4E', 'not-understood'],
    ['head', 'not-understood'],
    ['head,pot,78.42', 'not-understood'],
    ['head,78.42,pot', 'not-understood'],
    ['Booting v1.2', 'not-understood'],
    [',,,', 'not-understood'],
    ['1e999', 'not-understood'],
    ['1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17', 'not-understood'],
  ])('%j gives no reading, with the reason %s', (line, reason) => {
    expect(read(line)).toEqual(rejected(reason));
  });

  test('one channel without a value does not cost the others', () => {
    expect(read('head,nan,pot,91.3')).toEqual({ values: ['pot 91.3 °C'], rejected: ['no-value'] });
  });

  test('a decimal comma is understood once the person has said so', () => {
    const options = { decimalComma: true };
    expect(read('78,42', options)).toEqual(good('head 78.42 °C'));
    expect(read('head=78,42;pot=91,3', options)).toEqual(good('head 78.42 °C', 'pot 91.3 °C'));
    expect(read('78,42 91,3', options)).toEqual(good('channel-1 78.42 1', 'channel-2 91.3 1'));
    expect(read('78.42', options)).toEqual(good('head 78.42 °C'));
  });

  test('a unit in the line wins over the setting', () => {
    expect(read('78.42 C', { unit: '°F' })).toEqual(good('head 78.42 °C'));
    expect(read('172.4', { unit: '°F' })).toEqual(good('head 78 °C'));
    expect(read('351.15', { unit: 'K' })).toEqual(good('head 78 °C'));
  });

  // Resistances: IEC 60751 table values, test/reference/iec60751_pt100.csv.
  test('ohms become degrees by IEC 60751, and an open circuit is never a temperature', () => {
    expect(read('130.1334', { unit: 'ohm-pt100' }).values).toEqual(['head 78 °C']);
    expect(read('R=1301.334 ohm', { unit: 'ohm-pt1000' }).values).toEqual(['head 78 °C']);
    expect(read('138.5055 ohm').values).toEqual(['head 100 °C']);
    expect(read('99999', { unit: 'ohm-pt100' })).toEqual(rejected('outside-range'));
    expect(read('-5', { unit: 'ohm-pt100' }).values.join()).not.toMatch(/°C$/);
  });
});

describe('the language that was chosen', () => {
  test('plain text reads no braces, auto reads both, and either keeps the decimal comma', () => {
    const json = '{"head":78.42}';
    expect([
      read(json, { language: 'plain-text' }),
      read(json, { language: 'auto' }),
      read(`  ${json}`, { language: 'auto' }),
      read(`T=${json}`, { language: 'auto' }),
      read('78,42', { language: 'plain-text', decimalComma: true }),
      read('78.42', { language: 'json-lines' }),
      read('T=78.42', { language: 'json-lines' }),
    ]).toEqual([
      rejected('not-understood'),
      good('head 78.42 °C'),
      good('head 78.42 °C'),
      rejected('not-understood'),
      good('head 78.42 °C'),
      good('head 78.42 °C'),
      rejected('not-understood'),
    ]);
  });

  test('a name with brackets in it is plain text to auto', () => {
    expect(read('T1 [C]: 78.4')).toEqual(good('t1-c 78.4 1'));
  });

  test.each(['balance', 'scpi', 'modbus-rtu'] as const)(
    'what a device sends without being asked is plain text where it is asked in %s',
    (language) => {
      expect([
        read('S S   85.20 g', { language }),
        read('78,42', { language, decimalComma: true }),
        read('{"head":78.42}', { language }),
      ]).toEqual([good('receiver 85.2 g'), good('head 78.42 °C'), rejected('not-understood')]);
    },
  );

  test('a line with parity bits is read without them, and one that makes no sense either way by neither', () => {
    // Even parity: the eighth bit of a letter with an odd number of ones.
    const withParity = (text: string) =>
      [...text]
        .map((letter) => {
          const code = letter.charCodeAt(0);
          const ones = [...code.toString(2)].filter((bit) => bit === '1').length;
          return String.fromCharCode(code + 128 * (ones % 2));
        })
        .join('');
    expect(read(withParity('head=78.42 C'))).toEqual(good('head 78.42 °C'));
    expect(read(withParity('Booting v1.2'))).toEqual(rejected('not-understood'));
    expect(read('78.42 \u00b0C')).toEqual(good('head 78.42 °C'));
  });

  test.each(['T {head', ''])(
    'a pattern that cannot be used (%j) understands no line',
    (pattern) => {
      const reader = createLineReader({ ...defaults, language: 'own-pattern', pattern });
      expect(reader.read('78.42')).toEqual({
        text: '78.42',
        values: [],
        rejections: [{ kind: 'not-understood', text: '78.42' }],
      });
    },
  );
});

describe('names, units and moments in a line of text', () => {
  test.each([
    ['head 78.42 C pot 91.3 C', good('head 78.42 °C', 'pot 91.3 °C')],
    ['78.42 C 91.3 C', good('channel-1 78.42 °C', 'channel-2 91.3 °C')],
    ['head,78.42,C,91.3', good('head 78.42 °C', 'c 91.3 1')],
    ['78.42,F,91.3', good('channel-1 25.7889 °C', 'channel-2 91.3 1')],
    ['head,172.4,F', good('head 78 °C')],
    ['head,172.4,F,pot,91.3', good('head 78 °C', 'pot 91.3 °C')],
    ['head = 78.42   pot =91.3', good('head 78.42 °C', 'pot 91.3 °C')],
    ['head:78.42;  pot:91.3', good('head 78.42 °C', 'pot 91.3 °C')],
    ['head , 78.42 , pot , 91.3', good('head 78.42 °C', 'pot 91.3 °C')],
    ['78,42 C', good('head 78.42 °C')],
    ['78,42C', good('head 78.42 °C')],
    ['78,42 ºC', good('head 78.42 °C')],
    ['12:30 78.42', good('head 78.42 °C')],
    ['2025-03-14T10:15:22Z,78.42', good('head 78.42 °C')],
    ['3/14/25 10:15:22 78.42', good('head 78.42 °C')],
    ['  $TEMP,78.4*35  ', good('head 78.4 °C')],
  ])('%j is %j', (line, expected) => {
    expect(read(line)).toEqual(expected);
  });

  test.each([
    ['C', 'not-understood'],
    ['head,C', 'not-understood'],
    ['x$TEMP,78.4*35', 'not-understood'],
    ['$TEMP,78.4*35x', 'not-understood'],
    ['78,42 91,3 x', 'not-understood'],
    ['10:15:22', 'not-understood'],
    ['78.42,,', 'not-understood'],
    ['head,,78.42', 'not-understood'],
  ])('%j gives no reading: %s', (line, reason) => {
    expect(read(line)).toEqual(rejected(reason));
  });

  test('sixteen numbers are a line', () => {
    expect(read(Array.from({ length: 16 }, (_, at) => at).join(' ')).values).toHaveLength(16);
  });
});

describe('the power-on value of a digital sensor', () => {
  const qualities = (lines: readonly string[]) => {
    const reader = createLineReader(defaults);
    return lines.map((line) => reader.read(line).values[0]?.quality);
  };

  test('85.0 before anything else is suspect', () => {
    expect(qualities(['85.00', '85.00', '21.50', '21.56'])).toEqual([
      'suspect',
      'suspect',
      'good',
      'good',
    ]);
  });

  test('a head that climbs through 85 °C is believed', () => {
    expect(qualities(['84.50', '85.00', '85.06'])).toEqual(['good', 'good', 'good']);
  });

  test('a jump to exactly 85 °C in mid-run is suspect', () => {
    expect(qualities(['78.31', '85.00', '78.31'])).toEqual(['good', 'suspect', 'good']);
  });
});
