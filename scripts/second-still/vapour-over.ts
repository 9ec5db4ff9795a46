import { type BoilingTable, nodes } from './mixture.ts';

/** Amounts in a pot or on a plate [mol], a volatile trace among them. */
export interface Liquid {
  mol: number;
  ethanol: number;
  light: number;
}

/** Vapour over a boiling liquid. */
export interface Vapour {
  readonly y: number;
  readonly light: number;
  readonly temperatureC: number;
  readonly latentJPerMol: number;
}

/** The vapour a liquid gives off, and the temperature at which it does, at a pressure that has risen by so much. */
export function vapourOver(
  { mol, ethanol, light }: Liquid,
  table: BoilingTable,
  pressureRiseKPa: number,
): Vapour {
  const x = Math.min(1, Math.max(0, ethanol / mol));
  const position = Math.sqrt(x) * (nodes - 1);
  const node = Math.min(nodes - 2, Math.floor(position));
  const share = position - node;
  const read = (values: Float64Array): number =>
    (values[node] as number) * (1 - share) + (values[node + 1] as number) * share;
  const y = read(table.vapour);
  // A volatile of vanishing share: some 30 times enriched over water, 4 times over ethanol.
  const enriched = 4 + 26 * (1 - x) ** 6;
  const lightShare = light / mol;
  return {
    y,
    light: Math.min(0.5, enriched * lightShare),
    temperatureC:
      read(table.temperatureC) +
      read(table.perKPa) * pressureRiseKPa -
      Math.min(0.4, (enriched - 1) * lightShare) / 0.037,
    latentJPerMol: 40_700 - 1800 * y,
  };
}
