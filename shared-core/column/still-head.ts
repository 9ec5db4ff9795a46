import { gasConstantJPerMolK } from '../thermo/index.ts';
import { heatContent, liquidHeatJPerMol } from './heat-content.ts';
import type { Rig } from './rig.ts';
import type { StageStack } from './stage-stack.ts';
import { lookUpDewTemperatureC } from './vapour-lookup.ts';
import type { VapourTable } from './vapour-table.ts';

/** Heat that creeps up the glass from the top plate to the head [W/K]: the head warms a little before vapour comes. */
const creepWPerK = 0.02;

/** The still head and the bulb in it. */
export interface StillHead {
  glassTemperatureC: number;
  /** Dew temperature of the last vapour that came [°C]. */
  vapourTemperatureC: number;
  vapourEthanolMoleFraction: number;
  /** Share of the head's gas space that vapour fills, 0 … 1. */
  bathedFraction: number;
  bulbTemperatureC: number;
  /** Vapour that went on to the condenser in the last step. */
  passedMol: number;
  passedEnergyJ: number;
}

/** A head at room temperature, full of air. */
export function coldHead(roomTemperatureC: number): StillHead {
  return {
    glassTemperatureC: roomTemperatureC,
    vapourTemperatureC: roomTemperatureC,
    vapourEthanolMoleFraction: 0,
    bathedFraction: 0,
    bulbTemperatureC: roomTemperatureC,
    passedMol: 0,
    passedEnergyJ: 0,
  };
}

/** What the head needs to know of its surroundings. */
export interface HeadConditions {
  readonly rig: Rig;
  readonly stepS: number;
  readonly roomTemperatureC: number;
  lossFactor: number;
  /** Lowering of the dew temperature by light volatiles [K]. */
  lighterByK: number;
}

/**
 * Part of the vapour condenses on the head's wall, as a film of its own composition, and runs back to the top
 * plate; the rest passes to the condenser. Half of the wall lies below the bulb.
 *
 * @returns heat lost to the room [J]
 */
export function stepStillHead(
  head: StillHead,
  stack: StageStack,
  table: VapourTable,
  conditions: HeadConditions,
): number {
  const { rig, stepS, roomTemperatureC } = conditions;
  const { heatCapacityJPerK, filmWPerK } = rig.head;
  const top = stack.count - 1;
  const vapour = stack.risenMol[top] as number;
  const vapourEnergy = stack.risenEnergyJ[top] as number;

  const creep = creepWPerK * stepS * ((stack.temperatureC[top] as number) - head.glassTemperatureC);
  const loss =
    rig.head.lossWPerK *
    conditions.lossFactor *
    stepS *
    (head.glassTemperatureC - roomTemperatureC);
  stack.energyJ[top] = (stack.energyJ[top] as number) - creep;
  let glassHeatJ = creep - loss;
  let pastBulbMol = 0;
  head.passedMol = 0;
  head.passedEnergyJ = 0;

  if (vapour > 0) {
    const y = (stack.risenEthanolMol[top] as number) / vapour;
    const dewC = lookUpDewTemperatureC(table, y) - conditions.lighterByK;
    head.vapourEthanolMoleFraction = y;
    head.vapourTemperatureC = dewC;
    const filmHeat = liquidHeatJPerMol(y, dewC);
    const latent = vapourEnergy / vapour - filmHeat;
    // Implicit in the wall's temperature, so that a thin wall cannot overshoot.
    const wall = head.glassTemperatureC + glassHeatJ / heatCapacityJPerK;
    const film = filmWPerK * stepS;
    const wallAfter = (wall + (film / heatCapacityJPerK) * dewC) / (1 + film / heatCapacityJPerK);
    const couldCondense = Math.max(0, (film * (dewC - wallAfter)) / latent);
    const condensed = Math.min(vapour, couldCondense);
    const returned = condensed * filmHeat;
    glassHeatJ += condensed * latent;
    stack.ethanolMol[top] = (stack.ethanolMol[top] as number) + condensed * y;
    stack.waterMol[top] = (stack.waterMol[top] as number) + condensed * (1 - y);
    stack.energyJ[top] = (stack.energyJ[top] as number) + returned;
    head.passedMol = vapour - condensed;
    head.passedEnergyJ = vapourEnergy - condensed * (latent + filmHeat);
    pastBulbMol = Math.max(0, vapour - couldCondense / 2);
  }
  head.glassTemperatureC += glassHeatJ / heatCapacityJPerK;
  batheBulb(head, pastBulbMol, table.pressureKPa, conditions);
  return loss;
}

/** Vapour drives the air out as it comes and collapses when it stays away; the bulb follows with its lag. */
function batheBulb(
  head: StillHead,
  pastBulbMol: number,
  pressureKPa: number,
  { rig, stepS }: HeadConditions,
): void {
  if (pastBulbMol > 0) {
    const kelvin = head.vapourTemperatureC + 273.15;
    const volumeMl = (1000 * pastBulbMol * gasConstantJPerMolK * kelvin) / pressureKPa;
    head.bathedFraction +=
      (1 - head.bathedFraction) * -Math.expm1(-volumeMl / rig.head.vapourSpaceMl);
  } else {
    head.bathedFraction *= Math.exp(-stepS / rig.head.recedeS);
  }
  const wet = head.bathedFraction;
  const ratePerS = Math.LN10 * (wet / rig.bulb.wetT90S + (1 - wet) / rig.bulb.dryT90S);
  head.bulbTemperatureC +=
    (surroundingTemperatureC(head) - head.bulbTemperatureC) * -Math.expm1(-ratePerS * stepS);
}

/** Temperature of what surrounds the bulb: vapour, or gas as warm as the wall. */
export function surroundingTemperatureC(head: StillHead): number {
  return (
    head.bathedFraction * head.vapourTemperatureC +
    (1 - head.bathedFraction) * head.glassTemperatureC
  );
}

/** Heat in the head's wall above 80 °C [J]. */
export function headHeatJ(head: StillHead, rig: Rig): number {
  return rig.head.heatCapacityJPerK * (head.glassTemperatureC - heatContent.zeroC);
}
