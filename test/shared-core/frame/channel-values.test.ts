import { describe, expect, test } from 'vitest';
import { toChannelValue } from '#shared-core';
import { celsiusFrom } from '../../../shared-core/frame/celsius-from.ts';
import { channelsForNames } from '../../../shared-core/frame/channel-for-name.ts';
import { meaningOf } from '../../../shared-core/frame/meaning-of.ts';
import type { RawValue } from '../../../shared-core/frame/raw-value.ts';
import { readUnit, readWireNumber } from '../../../shared-core/frame/wire-number.ts';

const raw = (value: number | null, unit: RawValue['unit'] = null): RawValue => ({
  name: null,
  value,
  unit,
});

/** Value, unit and doubt, or the reason for none. */
function given(channel: string, number: RawValue, setting: '°C' | '°F' | 'K' | 'ohm-pt100' = '°C') {
  const made = toChannelValue(channel, number, setting);
  if (!made.ok) return made.error;
  const { value, unit, quality, doubt } = made.value;
  expect([made.value.channel, quality]).toEqual([channel, doubt === null ? 'good' : 'bad']);
  return doubt === null ? `${value} ${unit}` : `${value} ${unit} ${doubt}`;
}

describe('a raw number in its channel', () => {
  test.each([
    [-55, '-55 °C'],
    [150, '150 °C'],
    [-55.01, '-55.01 °C outside-range'],
    [150.01, '150.01 °C outside-range'],
    [-127, '-127 °C sensor-disconnected'],
  ])('a head at %d °C is %s', (value, expected) => {
    expect(given('head', raw(value))).toBe(expected);
  });

  // The exact relations of the units: SI Brochure, 9th edition, table 8 (mmHg: 101.325/760 kPa, conventional).
  test.each([
    [raw(1013.25, 'hPa'), '101.325 kPa'],
    [raw(101_325, 'Pa'), '101.325 kPa'],
    [raw(760, 'mmHg'), '101.325 kPa'],
    [raw(101.325, 'kPa'), '101.325 kPa'],
    [raw(1013.25), '101.325 kPa'],
    [raw(101.325), '101.325 kPa'],
    [raw(500.1), '50.01 kPa'],
    [raw(500), '500 kPa outside-range'],
    [raw(501, 'kPa'), '501 kPa outside-range'],
    [raw(50), '50 kPa'],
    [raw(115), '115 kPa'],
    [raw(49.9), '49.9 kPa outside-range'],
    [raw(115.1), '115.1 kPa outside-range'],
  ])('a barometer that writes %j tells %s', (number, expected) => {
    expect(given('air-pressure', number)).toBe(expected);
  });

  test.each([
    [raw(0.0412, 'kg'), '41.2 g'],
    [raw(41.2, 'g'), '41.2 g'],
    [raw(41.2), '41.2 g'],
    [raw(41.2, 'mL'), '41.2 mL'],
    [raw(-1, 'mL'), '-1 mL outside-range'],
    [raw(-100), '-100 g'],
    [raw(-101), '-101 g outside-range'],
    [raw(50_001), '50001 g outside-range'],
    [raw(50_001, 'mL'), '50001 mL outside-range'],
  ])('a receiver that writes %j holds %s', (number, expected) => {
    expect(given('receiver', number)).toBe(expected);
  });

  test.each([
    ['pot', raw(172.4), '78 °C'],
    ['condenser-outlet', raw(172.4), '78 °C'],
    ['room', raw(172.4), '78 °C'],
    ['ferment', raw(172.4), '78 °C'],
    ['jacket', raw(172.4, '°F'), '78 °C'],
    ['jacket', raw(351.15, 'K'), '78 °C'],
    ['jacket', raw(78, '°C'), '78 °C'],
    ['jacket', raw(172.4), '172.4 1'],
    ['jacket', raw(2e9), '2000000000 1 outside-range'],
  ])(
    '%s is a temperature if its place or its unit says so: %j is %s',
    (channel, number, expected) => {
      expect(given(channel, number, '°F')).toBe(expected);
    },
  );

  test('a converted value has eight figures, one that needs no converting has all of its own', () => {
    expect([given('head', raw(70.1), '°F'), given('head', raw(21.123456789))]).toEqual([
      '21.166667 °C',
      '21.123456789 °C',
    ]);
  });

  test('no value and an impossible resistance are told with what was heard', () => {
    expect([
      given('pot', raw(null)),
      given('head', raw(99_999, 'ohm')),
      given('head', raw(99_999), 'ohm-pt100'),
      given('head', raw(-1), 'K'),
    ]).toEqual([
      { kind: 'no-value', text: 'pot' },
      { kind: 'outside-range', text: '99999 ohm' },
      { kind: 'outside-range', text: '99999 ohm-pt100' },
      { kind: 'outside-range', text: '-1 K' },
    ]);
  });
});

test('ohms are a resistance, whatever unit the setting has for bare numbers', () => {
  expect(
    (['°C', '°F', 'K', 'ohm-pt100'] as const).map((setting) =>
      celsiusFrom(138.5055, 'ohm', setting),
    ),
  ).toEqual(Array.from({ length: 4 }, () => expect.closeTo(100, 3)));
});

// 273.15 K and 32 °F are 0 °C by definition; resistances: IEC 60751, test/reference/iec60751_pt100.csv.
test('degrees Celsius follow from what is written, and from the setting where nothing is', () => {
  expect([
    celsiusFrom(0, 'K', '°C'),
    celsiusFrom(-0.001, 'K', '°C'),
    celsiusFrom(32, '°F', 'K'),
    celsiusFrom(212, null, '°F'),
    celsiusFrom(21, '°C', '°F'),
    celsiusFrom(21, null, '°C'),
    celsiusFrom(138.5055, 'ohm', '°F'),
    celsiusFrom(1385.055, 'ohm', 'ohm-pt1000'),
    celsiusFrom(1385.055, null, 'ohm-pt1000'),
    celsiusFrom(21, 'g', '°C'),
    celsiusFrom(21, 'mL', 'ohm-pt100'),
  ]).toEqual([
    -273.15,
    null,
    0,
    100,
    21,
    21,
    expect.closeTo(100, 3),
    expect.closeTo(100, 3),
    expect.closeTo(100, 3),
    null,
    null,
  ]);
});

test('a word that every object of the language knows is no unit', () => {
  expect(['constructor', '__proto__', 'valueOf'].map(readUnit)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect(readWireNumber('78.42 constructor', false)).toEqual({ kind: 'neither' });
});

describe('the channel of a value', () => {
  test.each([
    [[null], ['head']],
    [
      [null, null],
      ['channel-1', 'channel-2'],
    ],
    [['T'], ['head']],
    [
      ['t1', 't2'],
      ['head', 'pot'],
    ],
    [
      ['Head', 'Vapour'],
      ['head', 'vapour'],
    ],
    [
      ['head', 'head', 'head'],
      ['head', 'channel-2', 'channel-3'],
    ],
    [
      ['channel-2', null],
      ['channel-2', 'extra-2'],
    ],
    [
      ['channel-3', 'extra-3', null],
      ['channel-3', 'extra-3', 'value-3'],
    ],
    [['  Jacket  Top! '], ['jacket-top']],
    [['--Jacket--'], ['jacket']],
    [['j'.repeat(40)], ['j'.repeat(32)]],
    [['°°°'], ['channel-1']],
    [['constructor'], ['constructor']],
    [['42'], ['channel-1']],
  ])('of lines that name %j is %j', (names, channels) => {
    expect(channelsForNames(names)).toEqual(channels);
  });
});

test('in a pattern of the person the names are the channels, and a renamed one takes its new units', () => {
  const values = [
    { name: 'jacket', value: 85.2, unit: null },
    { name: 'Head', value: 80, unit: null },
    { name: null, value: null, unit: null },
  ];
  expect(
    meaningOf(values, {
      language: 'own-pattern',
      unit: '°C',
      channels: { jacket: 'receiver' },
    }),
  ).toEqual({
    values: [
      { channel: 'receiver', value: 85.2, unit: 'g', quality: 'good', doubt: null },
      { channel: 'Head', value: 80, unit: '1', quality: 'good', doubt: null },
    ],
    rejections: [{ kind: 'no-value', text: 'head' }],
  });
});
