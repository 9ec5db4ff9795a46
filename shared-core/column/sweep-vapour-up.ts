import { heatContent, vapourHeatJPerMol } from './heat-content.ts';
import type { StageStack, TraceStack } from './stage-stack.ts';
import { type BoilingPoint, lookUpBoiling } from './vapour-lookup.ts';
import { tableCells, type VapourTable } from './vapour-table.ts';

/** What drives one sweep. */
export interface SweepConditions {
  /** Heat into the pot in this step [J]. */
  heatJ: number;
  /** Step [s]. */
  stepS: number;
  roomTemperatureC: number;
  /** Draught: multiplies the loss of the column. */
  lossFactor: number;
  /** Most vapour the pot may release in this step [mol]; below its share when the pot bumps. */
  potReleaseMol: number;
}

// Own names for the inner loop's constants: looking them up in another module costs a third of its time.
const { zeroC, liquidEthanolJPerMolK, liquidWaterJPerMolK } = heatContent;
const cells = tableCells;
/** Below this a stage counts as dry [mol]. */
const dryMol = 1e-9;
const boiling: BoilingPoint = { temperatureC: 0, temperaturePerX: 0, y: 0, yPerX: 0 };

/**
 * Heats the pot and lets vapour rise through all stages within the step, from the bottom up.
 *
 * On each stage the heat above saturation turns into vapour, `V = (E − E_sat)/(ΔH + C dT/dn)`: one Newton step
 * of the flash. What it misses stays in the stage's energy and is released in the next step, so no joule is
 * lost. The ethanol in the vapour is taken linear-implicitly, stable however small a plate's hold-up.
 *
 * @returns heat lost to the room [J]
 */
export function sweepVapourUp(
  stack: StageStack,
  table: VapourTable,
  conditions: SweepConditions,
): number {
  const { ethanolMol, waterMol, energyJ, temperatureC, glassJPerK, traces } = stack;
  const { risenMol, risenEthanolMol, risenEnergyJ } = stack;
  let lostJ = 0;
  for (let stage = 0; stage < stack.count; stage++) {
    const lossFactor = stage === 0 ? 1 : conditions.lossFactor;
    const loss =
      (stack.lossWPerK[stage] as number) *
      lossFactor *
      conditions.stepS *
      ((temperatureC[stage] as number) - conditions.roomTemperatureC);
    lostJ += loss;
    let ethanol = ethanolMol[stage] as number;
    let water = waterMol[stage] as number;
    let energy = (energyJ[stage] as number) - loss;
    let enteringY = -1;
    if (stage === 0) {
      energy += conditions.heatJ;
    } else {
      const entering = risenMol[stage - 1] as number;
      const enteringEthanol = risenEthanolMol[stage - 1] as number;
      ethanol += enteringEthanol;
      water += entering - enteringEthanol;
      energy += risenEnergyJ[stage - 1] as number;
      if (entering > 0) enteringY = enteringEthanol / entering;
    }
    const glass = glassJPerK[stage] as number;
    const total = ethanol + water;
    let capacity = glass + (ethanol * liquidEthanolJPerMolK + water * liquidWaterJPerMolK);
    let vapour = 0;
    let vapourEthanol = 0;
    let vapourEnergy = 0;
    let x = 0;
    if (total > dryMol) {
      x = ethanol / total;
      lookUpBoiling(table, x, boiling);
      const excess = energy - capacity * (boiling.temperatureC - zeroC);
      if (excess > 0) {
        const efficiency = enteringY < 0 ? 1 : (stack.efficiency[stage] as number);
        const y = efficiency === 1 ? boiling.y : enteringY + efficiency * (boiling.y - enteringY);
        const vapourHeat = vapourHeatJPerMol(y, boiling.temperatureC);
        const above = boiling.temperatureC - zeroC;
        const latent =
          vapourHeat - (y * liquidEthanolJPerMolK + (1 - y) * liquidWaterJPerMolK) * above;
        // As vapour leaves, the rest boils hotter: that takes part of the excess.
        const heating = (-capacity * boiling.temperaturePerX * (y - x)) / total;
        vapour = excess / (latent + Math.max(0, heating));
        vapour = Math.min(vapour, 0.9 * total);
        if (stage === 0) vapour = Math.min(vapour, conditions.potReleaseMol);
        const share = vapour / total;
        const slope = efficiency * boiling.yPerX;
        const meanY = y - (slope * share * (y - x)) / (1 + share * (slope - 1));
        vapourEthanol = Math.min(Math.max(vapour * meanY, vapour - water), ethanol, vapour);
        vapourEnergy = vapour * vapourHeat;
        ethanol -= vapourEthanol;
        water -= vapour - vapourEthanol;
        energy -= vapourEnergy;
        capacity = glass + (ethanol * liquidEthanolJPerMolK + water * liquidWaterJPerMolK);
      }
    }
    ethanolMol[stage] = ethanol;
    waterMol[stage] = water;
    energyJ[stage] = energy;
    temperatureC[stage] = zeroC + energy / capacity;
    risenMol[stage] = vapour;
    risenEthanolMol[stage] = vapourEthanol;
    risenEnergyJ[stage] = vapourEnergy;
    for (const trace of traces) {
      raiseTrace(trace, stage, x, total > dryMol ? vapour / total : 0, stack);
    }
  }
  return lostJ;
}

/** Splits a trace between a stage and the vapour that leaves it; implicit, for ratios of 50 and more. */
function raiseTrace(
  trace: TraceStack,
  stage: number,
  x: number,
  vapourShare: number,
  stack: StageStack,
): void {
  const { mol, risenMol } = trace;
  const entering = stage === 0 ? 0 : (risenMol[stage - 1] as number);
  const held = (mol[stage] as number) + entering;
  if (vapourShare === 0) {
    mol[stage] = held;
    risenMol[stage] = 0;
    return;
  }
  const scaled = Math.sqrt(x) * cells;
  const cell = scaled < cells ? scaled | 0 : cells - 1;
  const low = trace.volatilityRatio[cell] as number;
  const ratio = low + (scaled - cell) * ((trace.volatilityRatio[cell + 1] as number) - low);
  const stripping = vapourShare * ratio;
  const equilibrium = (held * stripping) / (1 + stripping);
  const efficiency = stage === 0 ? 1 : (stack.efficiency[stage] as number);
  const rises = Math.min(held, entering + efficiency * (equilibrium - entering));
  mol[stage] = held - rises;
  risenMol[stage] = rises;
}
