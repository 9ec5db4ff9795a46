import {
  heatOfEvaporation,
  lightVapour,
  lookUp,
  loweredByLightK,
  type MixtureTables,
} from './wilson-mixture.ts';

/** A column filled with beads, cut into slices; the last slice is the still head, which holds none. */
export interface ColumnSetup {
  readonly slices: number;
  /** Transfer units of the whole packing at the usual flow. */
  readonly transferUnits: number;
  /** Liquid that clings to the whole packing and doesn't drain [mol]; time a slice takes to drain [s]. */
  readonly clingingMol: number;
  readonly drainS: number;
  /** Of the whole column: glass and beads, film of condensate on them, loss to the room. */
  readonly wallJPerK: number;
  readonly filmWPerK: number;
  readonly lossWPerK: number;
  readonly usualMolPerS: number;
}

/** Vapour that passes in one step, with the shares of ethanol and of what is light. */
export interface VapourParcel {
  mol: number;
  ethanol: number;
  light: number;
}

/** Liquid by substance [mol]. */
export interface LiquidParcel {
  ethanolMol: number;
  waterMol: number;
  lightMol: number;
}

export interface PackedColumn {
  readonly setup: ColumnSetup;
  /** By slice from the bottom: liquid by substance [mol], wall temperature [°C]. */
  readonly ethanolMol: Float64Array;
  readonly waterMol: Float64Array;
  readonly lightMol: Float64Array;
  readonly wallC: Float64Array;
}

/** Height of a transfer unit grows with the flow by this power; usual for dumped packings, from memory. */
const unitHeightPower = 0.25;
/** A slice with less liquid than this share of what clings is only partly wetted. */
const wettedShare = 0.3;
/** The bare head still exchanges a little with its walls. */
const headTransferUnits = 0.1;

export function emptyColumn(setup: ColumnSetup, roomC: number): PackedColumn {
  const { slices } = setup;
  return {
    setup,
    ethanolMol: new Float64Array(slices),
    waterMol: new Float64Array(slices),
    lightMol: new Float64Array(slices),
    wallC: new Float64Array(slices).fill(roomC),
  };
}

/** Dew point of a vapour [°C]. */
export function dewPoint(tables: MixtureTables, ethanol: number, light: number): number {
  const rest = 1 - light;
  return rest <= 0 ? 0 : lookUp(tables.dewC, ethanol / rest) - loweredByLightK(light);
}

/**
 * Sends vapour up through the column: each slice's wall condenses some of it, its liquid exchanges with the rest by
 * `y_out = y* − (y* − y_in) exp(−NTU)`. What leaves at the top is left in `vapour`. Exchange is mole for mole, and
 * never takes more of a substance than there is, so that nothing is lost or made.
 */
export function riseThrough(
  column: PackedColumn,
  tables: MixtureTables,
  vapour: VapourParcel,
  roomC: number,
  stepS: number,
): void {
  const { setup, ethanolMol, waterMol, lightMol, wallC } = column;
  const { slices } = setup;
  const flow = Math.max(0.05, vapour.mol / stepS / setup.usualMolPerS);
  const sliceUnits = setup.transferUnits / (slices - 1) / flow ** unitHeightPower;
  const wetMol = (wettedShare * setup.clingingMol) / slices;
  const film = (setup.filmWPerK * stepS) / slices;
  const capacity = setup.wallJPerK / slices;
  const loss = ((setup.lossWPerK / slices) * stepS) / capacity;
  for (let slice = 0; slice < slices; slice += 1) {
    if (vapour.mol > 0) {
      condense(column, tables, vapour, slice, film, capacity);
      const heldMol =
        (ethanolMol[slice] as number) + (waterMol[slice] as number) + (lightMol[slice] as number);
      if (vapour.mol > 0 && heldMol > 0) {
        const units = slice === slices - 1 ? headTransferUnits : sliceUnits;
        exchange(column, tables, vapour, slice, heldMol, (units * heldMol) / (heldMol + wetMol));
      }
    }
    wallC[slice] = (wallC[slice] as number) - loss * ((wallC[slice] as number) - roomC);
  }
}

function condense(
  { ethanolMol, waterMol, lightMol, wallC }: PackedColumn,
  tables: MixtureTables,
  vapour: VapourParcel,
  slice: number,
  filmJPerK: number,
  capacityJPerK: number,
): void {
  const overK = dewPoint(tables, vapour.ethanol, vapour.light) - (wallC[slice] as number);
  if (overK <= 0) return;
  const latent = heatOfEvaporation(vapour.ethanol);
  const heatJ = Math.min(overK * Math.min(filmJPerK, capacityJPerK), vapour.mol * latent);
  const condensedMol = heatJ / latent;
  wallC[slice] = (wallC[slice] as number) + heatJ / capacityJPerK;
  ethanolMol[slice] = (ethanolMol[slice] as number) + condensedMol * vapour.ethanol;
  lightMol[slice] = (lightMol[slice] as number) + condensedMol * vapour.light;
  waterMol[slice] =
    (waterMol[slice] as number) + condensedMol * (1 - vapour.ethanol - vapour.light);
  vapour.mol = Math.max(0, vapour.mol - condensedMol);
}

function exchange(
  { ethanolMol, waterMol, lightMol }: PackedColumn,
  tables: MixtureTables,
  vapour: VapourParcel,
  slice: number,
  heldMol: number,
  units: number,
): void {
  const ethanol = ethanolMol[slice] as number;
  const water = waterMol[slice] as number;
  const light = lightMol[slice] as number;
  const x = ethanol > 0 ? ethanol / (ethanol + water) : 0;
  const lightStar = lightVapour(x, light / heldMol);
  const ethanolStar = (1 - lightStar) * lookUp(tables.vapour, x);
  const kept = Math.exp(-units);
  const lightOut = lightStar - (lightStar - vapour.light) * kept;
  const ethanolOut = ethanolStar - (ethanolStar - vapour.ethanol) * kept;
  let lightGain = vapour.mol * (vapour.light - lightOut);
  let ethanolGain = vapour.mol * (vapour.ethanol - ethanolOut);
  if (lightGain < -light) lightGain = -light;
  if (ethanolGain < -ethanol) ethanolGain = -ethanol;
  if (ethanolGain + lightGain > water) ethanolGain = water - lightGain;
  ethanolMol[slice] = ethanol + ethanolGain;
  lightMol[slice] = light + lightGain;
  waterMol[slice] = water - ethanolGain - lightGain;
  vapour.light -= lightGain / vapour.mol;
  vapour.ethanol -= ethanolGain / vapour.mol;
}

/** Lets liquid run down by one step; returns what runs back into the pot. */
export function drain(column: PackedColumn, stepS: number): LiquidParcel {
  const { setup, ethanolMol, waterMol, lightMol } = column;
  const clings = setup.clingingMol / setup.slices;
  const drained = 1 - Math.exp(-stepS / setup.drainS);
  const returned = { ethanolMol: 0, waterMol: 0, lightMol: 0 };
  for (let slice = 0; slice < setup.slices; slice += 1) {
    const ethanol = ethanolMol[slice] as number;
    const water = waterMol[slice] as number;
    const light = lightMol[slice] as number;
    const heldMol = ethanol + water + light;
    if (heldMol <= clings) continue;
    const share = (drained * (heldMol - clings)) / heldMol;
    ethanolMol[slice] = ethanol * (1 - share);
    waterMol[slice] = water * (1 - share);
    lightMol[slice] = light * (1 - share);
    if (slice === 0) {
      returned.ethanolMol = ethanol * share;
      returned.waterMol = water * share;
      returned.lightMol = light * share;
    } else {
      ethanolMol[slice - 1] = (ethanolMol[slice - 1] as number) + ethanol * share;
      waterMol[slice - 1] = (waterMol[slice - 1] as number) + water * share;
      lightMol[slice - 1] = (lightMol[slice - 1] as number) + light * share;
    }
  }
  return returned;
}

/** Pot liquid thrown up by a vigorous boil: spread over the lower slices. */
export function throwUp(column: PackedColumn, liquid: LiquidParcel, reachedShare: number): void {
  const packed = column.setup.slices - 1;
  const reached = Math.min(packed, Math.max(1, Math.round(reachedShare * packed)));
  for (let slice = 0; slice < reached; slice += 1) {
    column.ethanolMol[slice] = (column.ethanolMol[slice] as number) + liquid.ethanolMol / reached;
    column.waterMol[slice] = (column.waterMol[slice] as number) + liquid.waterMol / reached;
    column.lightMol[slice] = (column.lightMol[slice] as number) + liquid.lightMol / reached;
  }
}
