/** One reading. */
export interface TimedTemperature {
  readonly timeS: number;
  readonly temperatureC: number;
}

/** Least-squares line through readings, `T = mean + slope (t − mean time)`. */
export interface RegressionLine {
  readonly count: number;
  readonly meanTimeS: number;
  readonly meanTemperatureC: number;
  readonly slopeKPerS: number;
  /** Σ (t − mean time)² [s²]. */
  readonly timeSpreadS2: number;
  /** √(Σ residual² / (n − 2)); 0 for fewer than three readings. */
  readonly residualStandardDeviationK: number;
}

/** Fits at least two readings at different times; others give a slope that is no number. */
export function regressionLine(readings: readonly TimedTemperature[]): RegressionLine {
  const count = readings.length;
  const mean = (of: (one: TimedTemperature) => number) =>
    readings.reduce((sum, one) => sum + of(one), 0) / count;
  const meanTimeS = mean(({ timeS }) => timeS);
  const meanTemperatureC = mean(({ temperatureC }) => temperatureC);
  let timeSpreadS2 = 0;
  let product = 0;
  for (const { timeS, temperatureC } of readings) {
    timeSpreadS2 += (timeS - meanTimeS) ** 2;
    product += (timeS - meanTimeS) * (temperatureC - meanTemperatureC);
  }
  const slopeKPerS = product / timeSpreadS2;
  const squares = readings.reduce((sum, { timeS, temperatureC }) => {
    const fitted = meanTemperatureC + slopeKPerS * (timeS - meanTimeS);
    return sum + (temperatureC - fitted) ** 2;
  }, 0);
  return {
    count,
    meanTimeS,
    meanTemperatureC,
    slopeKPerS,
    timeSpreadS2,
    residualStandardDeviationK: count > 2 ? Math.sqrt(squares / (count - 2)) : 0,
  };
}
