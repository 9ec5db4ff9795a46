import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts';

/** Where the plot lies and how time and temperature become pixels; null before the first layout. */
export interface PlotFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xOf: (timeS: number) => number;
  readonly yOf: (temperatureC: number) => number;
  /** The same without stopping at the edges, for lines that are clipped and must keep their slope. */
  readonly freeXOf: (timeS: number) => number;
  readonly freeYOf: (temperatureC: number) => number;
}

export function usePlotFrame(): PlotFrame | null {
  const area = usePlotArea();
  const x = useXAxisScale();
  const y = useYAxisScale();
  if (!area || !x || !y) return null;
  const right = area.x + area.width;
  const bottom = area.y + area.height;
  const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
  return {
    left: area.x,
    right,
    top: area.y,
    bottom,
    freeXOf: (timeS) => Number(x(timeS)),
    freeYOf: (temperatureC) => Number(y(temperatureC)),
    xOf: (timeS) => clamp(Number(x(timeS)), area.x - 1, right + 1),
    yOf: (temperatureC) => clamp(Number(y(temperatureC)), area.y - 1, bottom + 1),
  };
}
