/** Heat into the flask that a simulated still takes [W]: from a candle to a large mantle; the range people may state. */
export const heaterPowerRangeW = { low: 1, high: 5000 } as const;
