import type { LiquidParcel, VapourParcel } from './packed-column.ts';
import {
  heatOfEvaporation,
  lightVapour,
  lookUp,
  loweredByLightK,
  type MixtureTables,
} from './wilson-mixture.ts';

export interface PotSetup {
  readonly charge: LiquidParcel;
  readonly glassJPerK: number;
  readonly lossWPerK: number;
  /** How slowly the heat follows the hand: a flame some seconds, a mantle minutes [s]. */
  readonly heaterS: number;
  /** Superheat at which boiling starts again after a pause [K]: little with fresh boiling chips. */
  readonly bumpK: number;
}

export interface BoilingPot {
  readonly setup: PotSetup;
  readonly liquid: LiquidParcel;
  temperatureC: number;
  heaterW: number;
  /** Seconds without a bubble. */
  stillS: number;
}

/** Molar heat capacities of the liquids near 80 °C [J/(mol K)], round, from memory. */
const ethanolJPerMolK = 150;
const waterJPerMolK = 75.5;
/** Superheated liquid boils off within some seconds. */
const boilOffS = 3;
const nucleiDieS = 10;

export function coldPot(setup: PotSetup, roomC: number): BoilingPot {
  return {
    setup,
    liquid: { ...setup.charge },
    temperatureC: roomC,
    heaterW: 0,
    stillS: nucleiDieS,
  };
}

/** Ethanol per ethanol and water in the pot. */
export function potFraction({ liquid }: BoilingPot): number {
  const sum = liquid.ethanolMol + liquid.waterMol;
  return sum > 0 ? liquid.ethanolMol / sum : 0;
}

/** Heats the pot for one step and takes out what boils off. */
export function boil(
  pot: BoilingPot,
  tables: MixtureTables,
  wantedW: number,
  roomC: number,
  stepS: number,
): VapourParcel {
  const { setup, liquid } = pot;
  pot.heaterW += (wantedW - pot.heaterW) * (1 - Math.exp(-stepS / setup.heaterS));
  const capacity = heatCapacity(pot);
  const lossW = setup.lossWPerK * (pot.temperatureC - roomC);
  pot.temperatureC += ((pot.heaterW - lossW) * stepS) / capacity;

  const sumMol = liquid.ethanolMol + liquid.waterMol + liquid.lightMol;
  const x = potFraction(pot);
  const light = lightVapour(x, liquid.lightMol / sumMol);
  const ethanol = (1 - light) * lookUp(tables.vapour, x);
  const overK = pot.temperatureC - lookUp(tables.boilsC, x) + loweredByLightK(light);
  const needsK = pot.stillS >= nucleiDieS ? setup.bumpK : 0;
  if (overK <= needsK) {
    pot.stillS += stepS;
    return { mol: 0, ethanol, light };
  }
  pot.stillS = 0;
  const latent = heatOfEvaporation(ethanol);
  const boiledMol = Math.min(
    0.02 * sumMol,
    ((overK * capacity) / latent) * (1 - Math.exp(-stepS / boilOffS)),
  );
  pot.temperatureC -= (boiledMol * latent) / capacity;
  const lightMol = Math.min(liquid.lightMol, boiledMol * light);
  const ethanolMol = Math.min(liquid.ethanolMol, boiledMol * ethanol);
  liquid.lightMol -= lightMol;
  liquid.ethanolMol -= ethanolMol;
  liquid.waterMol -= boiledMol - lightMol - ethanolMol;
  return { mol: boiledMol, ethanol: ethanolMol / boiledMol, light: lightMol / boiledMol };
}

/** Takes back what ran down the column, which is cooler than the pot. */
export function takeBack(pot: BoilingPot, returned: LiquidParcel, temperatureC: number): void {
  const { liquid } = pot;
  const capacity = heatCapacity(pot);
  const added = ethanolJPerMolK * returned.ethanolMol + waterJPerMolK * returned.waterMol;
  pot.temperatureC += ((temperatureC - pot.temperatureC) * added) / (capacity + added);
  liquid.ethanolMol += returned.ethanolMol;
  liquid.waterMol += returned.waterMol;
  liquid.lightMol += returned.lightMol;
}

/** Takes a share of the pot's liquid out, as it is. */
export function scoop({ liquid }: BoilingPot, share: number): LiquidParcel {
  const taken = {
    ethanolMol: liquid.ethanolMol * share,
    waterMol: liquid.waterMol * share,
    lightMol: liquid.lightMol * share,
  };
  liquid.ethanolMol -= taken.ethanolMol;
  liquid.waterMol -= taken.waterMol;
  liquid.lightMol -= taken.lightMol;
  return taken;
}

function heatCapacity({ setup, liquid }: BoilingPot): number {
  return (
    setup.glassJPerK +
    ethanolJPerMolK * (liquid.ethanolMol + liquid.lightMol) +
    waterJPerMolK * liquid.waterMol
  );
}
