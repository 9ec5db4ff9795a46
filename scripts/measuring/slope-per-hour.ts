/** Slope of the straight line of least squares through values at whole hours; NaN for fewer than two. */
export function slopePerHour(
  points: readonly { readonly hour: number; readonly value: number }[],
): number {
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const meanHour = mean(points.map(({ hour }) => hour));
  const meanValue = mean(points.map(({ value }) => value));
  const spread = points.reduce((sum, { hour }) => sum + (hour - meanHour) ** 2, 0);
  const together = points.reduce(
    (sum, { hour, value }) => sum + (hour - meanHour) * (value - meanValue),
    0,
  );
  return points.length < 2 ? Number.NaN : together / spread;
}
