import { expect, test } from 'vitest';
import { regressionLine } from '../../../shared-core/probe/regression-line.ts';

const readings = (...temperaturesC: readonly number[]) =>
  temperaturesC.map((temperatureC, index) => ({ timeS: 1000 + 10 * index, temperatureC }));

test('a line through readings has the slope, the spread and the scatter of a calculation by hand', () => {
  expect(regressionLine(readings(20, 21, 20))).toEqual({
    count: 3,
    meanTimeS: 1010,
    meanTemperatureC: expect.closeTo(61 / 3, 12),
    slopeKPerS: expect.closeTo(0, 12),
    timeSpreadS2: 200,
    // Residuals −1/3, 2/3 and −1/3 K; one degree of freedom.
    residualStandardDeviationK: expect.closeTo(Math.sqrt(6 / 9), 12),
  });
  // Slope (30 + 5 + 5 + 30)/500 K/s; residuals ±0.1 and ±0.3 K; two degrees of freedom.
  expect(regressionLine(readings(20, 21, 23, 24))).toMatchObject({
    slopeKPerS: expect.closeTo(0.14, 12),
    residualStandardDeviationK: expect.closeTo(Math.sqrt(0.2 / 2), 12),
  });
});

test('a line through two readings scatters by nothing', () => {
  expect(regressionLine(readings(20, 25))).toMatchObject({
    slopeKPerS: 0.5,
    residualStandardDeviationK: 0,
  });
});
