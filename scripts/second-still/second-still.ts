import type { TrueSecond } from '../ensemble/scored-run.ts';
import { type BoilingTable, boilingTable, molarVolumeMl, nodes, strengthAbv } from './mixture.ts';

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

/** What the person does with the heat, in seconds after vapour has reached the head. */
export interface HeatCourse {
  /** From a time on, a share of the heat that brought the charge to the boil. */
  readonly shares: readonly { readonly fromS: number; readonly share: number }[];
  /** Heat taken away, and given back. */
  readonly removals: readonly { readonly fromS: number; readonly toS: number }[];
  /** The heat is taken off for good when the vapour has been 3 % vol weaker than the limit for so long [s]. */
  readonly weakForS: number;
  readonly limitAbv: number;
}

export interface SecondCourse {
  readonly samples: readonly TrueSecond[];
  readonly arrivalS: number | null;
  readonly heatOffS: number;
  /** Ethanol in pot, column and receiver at the end, less that charged [mol]. */
  readonly ethanolGainMol: number;
}

const stepS = 0.1;
const stepsASecond = 10;
const longestS = 5 * 3600;
const coolDownS = 900;
/** Least vapour at the bulb, as a share of the usual, that bathes it. */
const bathingShare = 0.12;
const goneShare = 0.03;
const liquidJPerMolK = 75.5;
const flaskJPerMlK = 0.25;
/** What a still gives in the end never exceeds this share of the charge. */
const mostDistilled = 0.4;

/** Runs a still from cold until some minutes after its heat was taken off. */
export function runSecondStill(still: SecondStill, heat: HeatCourse): SecondCourse {
  const { stages } = still;
  const top = stages.length - 1;
  const table = boilingTable(still.pressureKPa);
  const usualMolPerS = (0.9 * still.heaterW) / 40_000;
  const pot = {
    mol: still.chargedMol,
    ethanol: still.chargedMol * still.ethanolMoleFraction,
    light: still.chargedMol * still.lightMoleFraction,
    temperatureC: still.roomC,
  };
  const plates = stages.map(({ heldMol }) => ({
    mol: 0.02 * heldMol,
    ethanol: still.ethanolMoleFraction > 0 ? 0.01 * heldMol : 0,
    light: 0,
    wallC: still.roomC,
  }));
  const charged = pot.ethanol + plates.reduce((sum, { ethanol }) => sum + ethanol, 0);
  const delayed = new Float64Array(Math.round(still.deadS * stepsASecond) + 1).fill(still.roomC);
  const samples: TrueSecond[] = [];
  let heaterW = 0;
  let bulbC = still.roomC;
  let arrivalS: number | null = null;
  let heatOffS: number | null = null;
  let weakS = 0;
  let aboveLimitMl = 0;
  let belowLimitMl = 0;
  let aboveLimitMol = 0;
  let receivedMol = 0;
  let headAbv = 0;

  const heatShare = (timeS: number): number => {
    if (heatOffS !== null) return 0;
    if (arrivalS === null) return 1;
    const sinceS = timeS - arrivalS;
    if (heat.removals.some(({ fromS, toS }) => sinceS >= fromS && sinceS < toS)) return 0;
    return heat.shares.findLast(({ fromS }) => sinceS >= fromS)?.share ?? 1;
  };

  for (let step = 0; ; step += 1) {
    const timeS = step * stepS;
    heaterW += ((heatShare(timeS) * still.heaterW - heaterW) * stepS) / still.heaterS;
    const pressureRiseKPa = (still.pressureDriftKPa * timeS) / 7200;

    const below = vapourOver(pot, table, pressureRiseKPa);
    const net = heaterW - still.potLossWPerK * (pot.temperatureC - still.roomC);
    const potJPerK = liquidJPerMolK * pot.mol + flaskJPerMlK * still.chargeMl;
    const excessW = net - (potJPerK * (below.temperatureC - pot.temperatureC)) / stepS;
    let rising = { ...below, molPerS: 0 };
    if (pot.temperatureC >= below.temperatureC - 0.5 && excessW > 0) {
      rising.molPerS = Math.min(4 * usualMolPerS, excessW / below.latentJPerMol);
      pot.temperatureC = below.temperatureC;
    } else {
      const warmedC = pot.temperatureC + (net / potJPerK) * stepS;
      pot.temperatureC = Math.min(below.temperatureC, warmedC);
    }

    const draining = stages.map(({ heldMol }, index) => {
      const { mol } = plates[index] as (typeof plates)[number];
      return mol > heldMol ? (mol - heldMol) / still.drainS : 0;
    });
    const liquids = plates.map(({ mol, ethanol, light }) => ({
      x: ethanol / mol,
      light: light / mol,
    }));
    const leaves = rising;
    for (let index = 0; index <= top; index += 1) {
      const stage = stages[index] as Stage;
      const plate = plates[index] as (typeof plates)[number];
      const own = vapourOver(plate, table, pressureRiseKPa);
      const toWallW = Math.max(0, stage.filmWPerK * (own.temperatureC - plate.wallC));
      const onWall = Math.min(rising.molPerS, toWallW / own.latentJPerMol);
      const lostW = stage.lossWPerK * (plate.wallC - still.roomC);
      plate.wallC += ((onWall * own.latentJPerMol - lostW) / stage.wallJPerK) * stepS;
      const past = rising.molPerS - onWall;
      const wetted = Math.min(1, plate.mol / (0.3 * stage.heldMol));
      const leaving = {
        ...own,
        y: wetted * own.y + (1 - wetted) * rising.y,
        light: wetted * own.light + (1 - wetted) * rising.light,
        molPerS:
          index === top
            ? past / (1 + still.refluxRatio)
            : (past * rising.latentJPerMol) / own.latentJPerMol,
      };
      const downMol = draining[index] as number;
      const liquid = liquids[index] as (typeof liquids)[number];
      const fromAboveMol = draining[index + 1] ?? 0;
      const above = liquids[index + 1] ?? { x: 0, light: 0 };
      plate.mol += (rising.molPerS + fromAboveMol - leaving.molPerS - downMol) * stepS;
      plate.ethanol +=
        (rising.molPerS * rising.y +
          fromAboveMol * above.x -
          leaving.molPerS * leaving.y -
          downMol * liquid.x) *
        stepS;
      plate.light +=
        (rising.molPerS * rising.light +
          fromAboveMol * above.light -
          leaving.molPerS * leaving.light -
          downMol * liquid.light) *
        stepS;
      plate.light = Math.min(0.3 * plate.mol, Math.max(0, plate.light));
      rising = leaving;
    }
    const downMol = draining[0] as number;
    const lowest = liquids[0] as (typeof liquids)[number];
    pot.mol += (downMol - leaves.molPerS) * stepS;
    pot.ethanol += (downMol * lowest.x - leaves.molPerS * leaves.y) * stepS;
    pot.light = Math.max(
      0,
      pot.light + (downMol * lowest.light - leaves.molPerS * leaves.light) * stepS,
    );

    const passing = (rising.molPerS * (1 + still.refluxRatio)) / (bathingShare * usualMolPerS);
    const bathed = Math.min(1, passing);
    headAbv = strengthAbv(rising.y);
    const gainMl = rising.molPerS * molarVolumeMl(rising.y) * stepS;
    receivedMol += rising.molPerS * rising.y * stepS;
    if (headAbv >= heat.limitAbv) {
      aboveLimitMl += gainMl;
      aboveLimitMol += rising.molPerS * rising.y * stepS;
    } else belowLimitMl += gainMl;
    const wallC = Math.min(rising.temperatureC, (plates[top] as (typeof plates)[number]).wallC);
    delayed[step % delayed.length] = bathed * rising.temperatureC + (1 - bathed) * wallC;
    const felt = delayed[(step + 1) % delayed.length] as number;
    bulbC += ((felt - bulbC) * stepS) / still.bulbS;
    if (bathed >= 1) arrivalS ??= timeS;

    if (step % stepsASecond !== 0) continue;
    samples.push({
      timeS: samples.length,
      bathedFraction: bathed,
      bulbTemperatureC: bulbC,
      headVapourStrengthAbv: headAbv,
      distillateVolumeMl: aboveLimitMl + belowLimitMl,
      aboveLimitMl,
      belowLimitMl,
      aboveLimitEthanolMol: aboveLimitMol,
    });
    if (rising.molPerS > goneShare * usualMolPerS && arrivalS !== null && timeS > arrivalS + 120) {
      weakS = headAbv < heat.limitAbv - 3 ? weakS + 1 : 0;
    }
    const isDone =
      weakS >= heat.weakForS || aboveLimitMl + belowLimitMl > mostDistilled * still.chargeMl;
    if (isDone || timeS >= longestS - coolDownS) heatOffS ??= samples.length - 1;
    if (heatOffS !== null && samples.length > heatOffS + coolDownS) break;
  }
  const left = pot.ethanol + plates.reduce((sum, { ethanol }) => sum + ethanol, 0);
  return { samples, arrivalS, heatOffS, ethanolGainMol: left + receivedMol - charged };
}

/** Vapour over a boiling liquid. */
interface Vapour {
  readonly y: number;
  readonly light: number;
  readonly temperatureC: number;
  readonly latentJPerMol: number;
}

function vapourOver(
  {
    mol,
    ethanol,
    light,
  }: { readonly mol: number; readonly ethanol: number; readonly light: number },
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
