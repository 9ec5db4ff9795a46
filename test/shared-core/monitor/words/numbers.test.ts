import { describe, expect, test } from 'vitest';
import { createVapourScale } from '../../../../shared-core/monitor/situation/vapour-scale.ts';
import {
  celsius,
  kelvin,
  moving,
  percent,
  span,
  strengthRange,
  vapourStrength,
} from '../../../../shared-core/monitor/words/numbers.ts';

describe('a number in a sentence', () => {
  test('is a temperature to a tenth, and a difference without its sign, never below a tenth', () => {
    expect([celsius(78.36), celsius(-0.04 - 1), celsius(100)]).toEqual([
      '78.4 °C',
      '-1.0 °C',
      '100.0 °C',
    ]);
    expect([0, 0.094, 0.095, -1.24, 12].map(kelvin)).toEqual([
      'less than 0.1 K',
      'less than 0.1 K',
      '0.1 K',
      '1.2 K',
      '12.0 K',
    ]);
  });

  test('is a rate with its direction, to a tenth below 2 K/min, and none where it is not told from standing still', () => {
    const sayings = (
      [
        [0, 0],
        [0.094, 0],
        [-0.094, 1],
        [0.1, 0],
        [-0.4, 0.1],
        [0.4, 0.19],
        [0.4, 0.21],
        [-1.94, 0],
        [1.96, 0],
        [-7.6, 3],
      ] as const
    ).map(([kPerMin, sdKPerMin]) =>
      moving({ rateKPerS: kPerMin / 60, rateSdKPerS: sdKPerMin / 60 }, { departedS: null }),
    );
    expect(sayings).toEqual([
      'hardly moving',
      'hardly moving',
      'hardly moving',
      'rising 0.1 K/min',
      'falling 0.4 K/min',
      'rising 0.4 K/min',
      'at no sure rate',
      'falling 1.9 K/min',
      'rising 2 K/min',
      'falling 8 K/min',
    ]);
  });

  test('is none of a head that has departed from its level and is only not known to move', () => {
    const saying = (kPerMin: number) =>
      moving({ rateKPerS: kPerMin / 60, rateSdKPerS: 0.1 / 60 }, { departedS: 1700 });
    expect([0, 0.094, -0.05, 0.15, 0.4].map(saying)).toEqual([
      'at no sure rate',
      'at no sure rate',
      'at no sure rate',
      'at no sure rate',
      'rising 0.4 K/min',
    ]);
  });

  test('is a time in seconds below two minutes and in minutes above', () => {
    expect([0, 30.4, 119.4, 120, 149, 151, 3600].map(span)).toEqual([
      '0 s',
      '30 s',
      '119 s',
      '2 min',
      '2 min',
      '3 min',
      '60 min',
    ]);
  });

  test('is a probability that is never certain', () => {
    expect([1, 0.996, 0.994, 0.5, 0.006, 0.004, 0].map(percent)).toEqual([
      'over 99 %',
      'over 99 %',
      '99 %',
      '50 %',
      '1 %',
      'under 1 %',
      'under 1 %',
    ]);
  });

  test('is a range of strength, or one number where both ends are told the same', () => {
    expect([strengthRange(88.2, 93.4), strengthRange(88.2, 88.4)]).toEqual([
      '88–93 % vol',
      '88 % vol',
    ]);
  });

  test('is the weakest vapour at the hot end of a doubted temperature, two standard deviations up, and the strongest at the cool one', () => {
    const scale = createVapourScale(98.6, 80);
    expect(vapourStrength(scale, 84, 0.5)).toEqual({
      value: scale.strengthAbv(84),
      low: scale.strengthAbv(85),
      high: scale.strengthAbv(83),
    });
  });
});
