import { boilingTable } from './mixture.ts';
import { type Liquid, type Vapour, vapourOver } from './vapour-over.ts';

/** One stage of the column over the pot; the uppermost is the head and condenses for the reflux. */
export interface Stage {
  /** Liquid it holds before any runs down [mol]. */
  readonly heldMol: number;
  readonly wallJPerK: number;
  /** From vapour to wall, and from wall to room [W/K]. */
  readonly filmWPerK: number;
  readonly lossWPerK: number;
}

/** A still of another making: stages with walls that must warm, film condensation, a reflux condenser in the head. */
export interface SecondStill {
  readonly pressureKPa: number;
  /** Air pressure moves by so much in two hours [kPa]. */
  readonly pressureDriftKPa: number;
  readonly roomC: number;
  readonly chargeMl: number;
  readonly chargedMol: number;
  readonly ethanolMoleFraction: number;
  /** Mole fraction of something that boils far below ethanol: a trace that lowers the first vapour. */
  readonly lightMoleFraction: number;
  readonly stages: readonly Stage[];
  readonly refluxRatio: number;
  readonly drainS: number;
  readonly heaterW: number;
  readonly heaterS: number;
  readonly potLossWPerK: number;
  readonly bulbS: number;
  readonly deadS: number;
}

/** Vapour on its way up. */
export interface RisingVapour extends Vapour {
  readonly molPerS: number;
}

/** Pot and stages of the second still. */
export interface StageColumn {
  /** Goes on by one step of time under this heat; answers the vapour that leaves the head as distillate. */
  step(stepS: number, heaterW: number, pressureRiseKPa: number): RisingVapour;
  headWallC(): number;
  /** Ethanol in pot and column [mol]. */
  ethanolMol(): number;
}

interface Plate extends Liquid {
  wallC: number;
}

const liquidJPerMolK = 75.5;
const flaskJPerMlK = 0.25;

/** Vapour that comes when all the heat boils [mol/s]; a pot that bumps gives four times as much at most. */
export const usualMolPerS = ({ heaterW }: SecondStill): number => (0.9 * heaterW) / 40_000;
const mostOfUsual = 4;

/** A cold still, charged, its column all but dry. */
export function createStageColumn(still: SecondStill): StageColumn {
  const { stages } = still;
  const top = stages.length - 1;
  const table = boilingTable(still.pressureKPa);
  const pot = {
    mol: still.chargedMol,
    ethanol: still.chargedMol * still.ethanolMoleFraction,
    light: still.chargedMol * still.lightMoleFraction,
    temperatureC: still.roomC,
  };
  const plates = stages.map(
    ({ heldMol }): Plate => ({
      mol: 0.02 * heldMol,
      ethanol: still.ethanolMoleFraction > 0 ? 0.01 * heldMol : 0,
      light: 0,
      wallC: still.roomC,
    }),
  );

  /** Heats the pot up to its boiling point; what is left over makes vapour. */
  const boilPot = (stepS: number, heaterW: number, pressureRiseKPa: number): RisingVapour => {
    const vapour = vapourOver(pot, table, pressureRiseKPa);
    const netW = heaterW - still.potLossWPerK * (pot.temperatureC - still.roomC);
    const potJPerK = liquidJPerMolK * pot.mol + flaskJPerMlK * still.chargeMl;
    const excessW = netW - (potJPerK * (vapour.temperatureC - pot.temperatureC)) / stepS;
    if (pot.temperatureC >= vapour.temperatureC - 0.5 && excessW > 0) {
      pot.temperatureC = vapour.temperatureC;
      const most = mostOfUsual * usualMolPerS(still);
      return { ...vapour, molPerS: Math.min(most, excessW / vapour.latentJPerMol) };
    }
    const warmedC = pot.temperatureC + (netW / potJPerK) * stepS;
    pot.temperatureC = Math.min(vapour.temperatureC, warmedC);
    return { ...vapour, molPerS: 0 };
  };

  /** Lets vapour meet one stage: some condenses on the wall, the rest takes up the stage's own composition. */
  const meetStage = (
    index: number,
    stepS: number,
    rising: RisingVapour,
    pressureRiseKPa: number,
  ): RisingVapour => {
    const stage = stages[index] as Stage;
    const plate = plates[index] as Plate;
    const own = vapourOver(plate, table, pressureRiseKPa);
    const toWallW = Math.max(0, stage.filmWPerK * (own.temperatureC - plate.wallC));
    const onWall = Math.min(rising.molPerS, toWallW / own.latentJPerMol);
    const lostW = stage.lossWPerK * (plate.wallC - still.roomC);
    plate.wallC += ((onWall * own.latentJPerMol - lostW) / stage.wallJPerK) * stepS;
    const past = rising.molPerS - onWall;
    const wetted = Math.min(1, plate.mol / (0.3 * stage.heldMol));
    return {
      ...own,
      y: wetted * own.y + (1 - wetted) * rising.y,
      light: wetted * own.light + (1 - wetted) * rising.light,
      molPerS:
        index === top
          ? past / (1 + still.refluxRatio)
          : (past * rising.latentJPerMol) / own.latentJPerMol,
    };
  };

  return {
    step: (stepS, heaterW, pressureRiseKPa) => {
      // What runs down, and of which composition, by the state at the beginning of the step.
      const down = stages.map(({ heldMol }, index) => {
        const { mol, ethanol, light } = plates[index] as Plate;
        const molPerS = mol > heldMol ? (mol - heldMol) / still.drainS : 0;
        return { molPerS, x: ethanol / mol, light: light / mol };
      });
      const nothing = { molPerS: 0, x: 0, light: 0 };
      const boiled = boilPot(stepS, heaterW, pressureRiseKPa);
      let rising = boiled;
      for (let index = 0; index <= top; index += 1) {
        const leaving = meetStage(index, stepS, rising, pressureRiseKPa);
        const plate = plates[index] as Plate;
        const own = down[index] ?? nothing;
        const above = down[index + 1] ?? nothing;
        const gain = (comes: number, runs: number, goes: number, drains: number): number =>
          rising.molPerS * comes +
          above.molPerS * runs -
          leaving.molPerS * goes -
          own.molPerS * drains;
        plate.mol += gain(1, 1, 1, 1) * stepS;
        plate.ethanol += gain(rising.y, above.x, leaving.y, own.x) * stepS;
        plate.light += gain(rising.light, above.light, leaving.light, own.light) * stepS;
        plate.light = Math.min(0.3 * plate.mol, Math.max(0, plate.light));
        rising = leaving;
      }
      const back = down[0] ?? nothing;
      pot.mol += (back.molPerS - boiled.molPerS) * stepS;
      pot.ethanol += (back.molPerS * back.x - boiled.molPerS * boiled.y) * stepS;
      const light = pot.light + (back.molPerS * back.light - boiled.molPerS * boiled.light) * stepS;
      pot.light = Math.max(0, light);
      return rising;
    },
    headWallC: () => plates[top]?.wallC ?? still.roomC,
    ethanolMol: () => plates.reduce((sum, { ethanol }) => sum + ethanol, pot.ethanol),
  };
}
