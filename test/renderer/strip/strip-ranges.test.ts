import { describe, expect, test } from 'vitest';
import { temperatureRange } from '../../../renderer/strip/temperature-range.ts';
import { timeRange } from '../../../renderer/strip/time-range.ts';

const band = {
  pressureKPa: 101.325,
  pressureStandardUncertaintyKPa: 0.1,
  azeotropeC: 78.15,
  limitC: 83.5,
  leastStrengthAbv: 80,
  probeReadsHighK: 0,
  probeReadsHighRangeK: null,
};

describe('timeRange', () => {
  test('the whole run stays still for minutes and always has room ahead', () => {
    const ends = [0, 300, 560, 600, 1100].map((nowS) => timeRange('whole', nowS, null).toS);
    expect(ends).toEqual([600, 600, 600, 1200, 1200]);
  });

  test('the expected end is in view, the far end of its range too where what was seen keeps a third of the width', () => {
    const end = (low: number, value: number, high: number) => ({ low, value, high });
    expect(timeRange('whole', 1000, end(1100, 1500, 2800)).toS).toBe(3600);
    expect(timeRange('whole', 2200, end(2300, 3500, 14_600)).toS).toBe(7200);
    expect(timeRange('whole', 1000, end(2000, 5000, 9000)).toS).toBe(5400);
  });

  test('the last minutes move in steps of a tenth, not with every reading', () => {
    expect([2000, 2030, 2090].map((nowS) => timeRange('last-10-min', nowS, null))).toEqual([
      { fromS: 1500, toS: 2100 },
      { fromS: 1500, toS: 2100 },
      { fromS: 1560, toS: 2160 },
    ]);
  });
});

describe('temperatureRange', () => {
  test('close up holds the whole band and the head, whatever it is at', () => {
    const drawn = [
      { timeS: 0, value: 78.4 },
      { timeS: 1, value: 91.2 },
    ];
    expect(temperatureRange('plateau', band, drawn)).toEqual({ lowC: 75, highC: 93 });
  });

  test('whole reaches from room to above boiling water, and further when readings do', () => {
    expect([
      temperatureRange('whole', band, [{ timeS: 0, value: 24 }]),
      temperatureRange('whole', band, [{ timeS: 0, value: -3 }]),
    ]).toEqual([
      { lowC: 10, highC: 105 },
      { lowC: -10, highC: 105 },
    ]);
  });
});
