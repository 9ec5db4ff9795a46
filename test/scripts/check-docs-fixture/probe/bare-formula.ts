/** A physics function that documents nothing else. */
export function bareFormula({ drift, spanKPa }: { drift: number; spanKPa?: number }): number {
  return drift + (spanKPa ?? 0);
}
