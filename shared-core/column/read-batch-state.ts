import { type BatchMachine, machineTimeS } from './batch-machine.ts';
import type { BatchLedger, BatchState } from './batch-state.ts';
import type { Vessel } from './condenser.ts';
import { liquidHeatJ } from './heat-content.ts';
import { strengthAbv, volumeMl } from './liquid-table.ts';
import { headHeatJ, surroundingTemperatureC } from './still-head.ts';

/** Less distillate than this counts as none [mol/s]. */
const leastFlowMolPerS = 1e-7;

/** A snapshot of the machine. */
export function readBatchState(machine: BatchMachine): BatchState {
  const { stack, head, collection, stepS } = machine;
  const potEthanol = stack.ethanolMol[0] as number;
  const potWater = stack.waterMol[0] as number;
  const potEthanolMoleFraction = potEthanol / (potEthanol + potWater);
  const { receivers, aboveLimit, belowLimit } = collection;
  const receiver = receivers[receivers.length - 1] as Vessel;
  const boilUpMolPerS = (stack.risenMol[0] as number) / stepS;
  const distillateMolPerS = collection.condensedMol / stepS;
  let ethanolCollected = 0;
  let waterCollected = 0;
  for (const { ethanolMol, waterMol } of receivers) {
    ethanolCollected += ethanolMol;
    waterCollected += waterMol;
  }
  const dropped = volumeMl(collection.droppedEthanolMol, collection.droppedWaterMol);
  return {
    timeS: machineTimeS(machine),
    pressureKPa: machine.pressure.table.pressureKPa,
    heatW: machine.heatW,
    potTemperatureC: stack.temperatureC[0] as number,
    potEthanolMoleFraction,
    potStrengthAbv: strengthAbv(potEthanolMoleFraction),
    potVolumeMl: volumeMl(potEthanol, potWater),
    headVapourTemperatureC: surroundingTemperatureC(head),
    bulbTemperatureC: head.bulbTemperatureC,
    headVapourMoleFraction: head.vapourEthanolMoleFraction,
    headVapourStrengthAbv: strengthAbv(head.vapourEthanolMoleFraction),
    headVapourTraceMoleFraction: machine.headTraceMoleFraction,
    bathedFraction: head.bathedFraction,
    vapourAtHead: head.bathedFraction > 0.5,
    boilUpMolPerS,
    refluxRatio:
      distillateMolPerS > leastFlowMolPerS
        ? Math.max(0, boilUpMolPerS - distillateMolPerS) / distillateMolPerS
        : null,
    distillateVolumeMl: volumeMl(ethanolCollected, waterCollected),
    distillateRateMlPerMin: (60 / stepS) * dropped,
    aboveLimitMl: volumeMl(aboveLimit.ethanolMol, aboveLimit.waterMol),
    belowLimitMl: volumeMl(belowLimit.ethanolMol, belowLimit.waterMol),
    aboveLimitEthanolMol: aboveLimit.ethanolMol,
    receiverIndex: receivers.length - 1,
    receiver: readReceiver(receiver),
  };
}

function readReceiver({ ethanolMol, waterMol }: Vessel): BatchState['receiver'] {
  const total = ethanolMol + waterMol;
  return {
    volumeMl: volumeMl(ethanolMol, waterMol),
    ethanolMol,
    strengthAbv: total > 0 ? strengthAbv(ethanolMol / total) : 0,
  };
}

/** Adds up every vessel and every plate. */
export function readBatchLedger(machine: BatchMachine): BatchLedger {
  const { stack, collection, head, books, setup } = machine;
  const vessels = [collection.running, ...collection.receivers];
  let ethanolMol = 0;
  let waterMol = 0;
  let storedJ = headHeatJ(head, setup.rig);
  for (let stage = 0; stage < stack.count; stage++) {
    ethanolMol += stack.ethanolMol[stage] as number;
    waterMol += stack.waterMol[stage] as number;
    // From the temperatures, not from the energies kept: a slip between the two would show.
    const temperatureC = stack.temperatureC[stage] as number;
    storedJ += (stack.glassJPerK[stage] as number) * (temperatureC - 80);
    storedJ += liquidHeatJ(
      stack.ethanolMol[stage] as number,
      stack.waterMol[stage] as number,
      temperatureC,
    );
  }
  for (const vessel of vessels) {
    ethanolMol += vessel.ethanolMol;
    waterMol += vessel.waterMol;
  }
  const traceMol = stack.traces.map((trace, index) => {
    const inColumn = trace.mol.reduce((sum, mol) => sum + mol, 0);
    return vessels.reduce((sum, vessel) => sum + (vessel.traceMol[index] as number), inColumn);
  });
  return { ethanolMol, waterMol, traceMol, storedJ, ...books };
}
