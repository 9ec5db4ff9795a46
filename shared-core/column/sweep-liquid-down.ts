import { heatContent } from './heat-content.ts';
import type { StageStack } from './stage-stack.ts';

const { zeroC, liquidEthanolJPerMolK, liquidWaterJPerMolK } = heatContent;
/** Pure molar volumes [mL/mol]: good enough to say how much of a plate is above its hold-up. */
const ethanolMlPerMol = 58.4;
const waterMlPerMol = 18.05;

/**
 * Lets liquid above each plate's hold-up run to the stage below.
 *
 * Called right after the vapour has risen, and from the lowest plate up: all that runs down has met its vapour.
 * Liquid that slipped past a plate within one step would cost the column plates in proportion to the step.
 *
 * @param drainedShare what runs down in one step of the liquid above the hold-up, 0 … 1
 */
export function sweepLiquidDown(stack: StageStack, drainedShare: number): void {
  const { ethanolMol, waterMol, energyJ, temperatureC, traces, holdUpMlPerPlate } = stack;
  for (let stage = 1; stage < stack.count; stage++) {
    const ethanol = ethanolMol[stage] as number;
    const water = waterMol[stage] as number;
    const volumeMl = ethanol * ethanolMlPerMol + water * waterMlPerMol;
    if (volumeMl <= holdUpMlPerPlate) continue;
    const share = (drainedShare * (volumeMl - holdUpMlPerPlate)) / volumeMl;
    const ethanolDown = ethanol * share;
    const waterDown = water * share;
    const above = (temperatureC[stage] as number) - zeroC;
    const heatDown =
      (ethanolDown * liquidEthanolJPerMolK + waterDown * liquidWaterJPerMolK) * above;
    ethanolMol[stage] = ethanol - ethanolDown;
    waterMol[stage] = water - waterDown;
    energyJ[stage] = (energyJ[stage] as number) - heatDown;
    ethanolMol[stage - 1] = (ethanolMol[stage - 1] as number) + ethanolDown;
    waterMol[stage - 1] = (waterMol[stage - 1] as number) + waterDown;
    energyJ[stage - 1] = (energyJ[stage - 1] as number) + heatDown;
    for (const { mol } of traces) {
      const down = (mol[stage] as number) * share;
      mol[stage] = (mol[stage] as number) - down;
      mol[stage - 1] = (mol[stage - 1] as number) + down;
    }
  }
}
