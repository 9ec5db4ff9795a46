import { mixtureAmounts } from '../thermo/index.ts';
import type { BatchSetup } from './batch-setup.ts';
import { heatContent, liquidHeatJ } from './heat-content.ts';
import { lightVolatiles, tabulateVolatilityRatio } from './light-volatile.ts';
import type { VapourTable } from './vapour-table.ts';

/** One volatile in traces: how much lies on each stage, and what rose from it in the last step. */
export interface TraceStack {
  readonly mol: Float64Array;
  readonly risenMol: Float64Array;
  /** Vapour over liquid ratio at the nodes of the vapour table. */
  readonly volatilityRatio: Float64Array;
}

/** The pot (stage 0) and the plates above it, as columns of numbers for the inner loop. */
export interface StageStack {
  readonly count: number;
  readonly ethanolMol: Float64Array;
  readonly waterMol: Float64Array;
  /** Heat of liquid and glass above 80 °C [J]. */
  readonly energyJ: Float64Array;
  readonly temperatureC: Float64Array;
  /** Vapour that rose from the stage in the last step. */
  readonly risenMol: Float64Array;
  readonly risenEthanolMol: Float64Array;
  readonly risenEnergyJ: Float64Array;
  readonly glassJPerK: Float64Array;
  readonly lossWPerK: Float64Array;
  /** Share of a theoretical plate each stage is worth (Murphree, vapour side). */
  readonly efficiency: Float64Array;
  readonly holdUpMlPerPlate: number;
  readonly traces: readonly TraceStack[];
}

/** The rig before heating: the charge in the pot, the plates dry, all at their starting temperatures. */
export function chargedStack(
  setup: BatchSetup,
  roomTemperatureC: number,
  table: VapourTable,
): StageStack {
  const { charge, rig } = setup;
  const plateCount = Math.max(1, Math.ceil(rig.plates));
  const count = plateCount + 1;
  const column = () => new Float64Array(count);
  const stack: StageStack = {
    count,
    ethanolMol: column(),
    waterMol: column(),
    energyJ: column(),
    temperatureC: column().fill(roomTemperatureC),
    risenMol: column(),
    risenEthanolMol: column(),
    risenEnergyJ: column(),
    glassJPerK: column().fill(rig.column.heatCapacityJPerK / plateCount),
    lossWPerK: column().fill(rig.column.lossWPerK / plateCount),
    efficiency: column().fill(1),
    holdUpMlPerPlate: rig.column.holdUpMl / plateCount,
    traces: traceStacks(setup, table, count),
  };
  // Whole plates below, the rest of a fractional number on top; without plates the column only condenses.
  stack.efficiency[plateCount] = rig.plates - (plateCount - 1);
  stack.glassJPerK[0] = rig.flask.heatCapacityJPerK;
  stack.lossWPerK[0] = rig.flask.lossWPerK;
  stack.temperatureC[0] = charge.temperatureC ?? roomTemperatureC;
  const { ethanolMol, waterMol } = mixtureAmounts(charge);
  stack.ethanolMol[0] = ethanolMol;
  stack.waterMol[0] = waterMol;
  for (let stage = 0; stage < count; stage++) {
    const temperatureC = stack.temperatureC[stage] as number;
    stack.energyJ[stage] = (stack.glassJPerK[stage] as number) * (temperatureC - heatContent.zeroC);
  }
  stack.energyJ[0] =
    (stack.energyJ[0] as number) +
    liquidHeatJ(ethanolMol, waterMol, stack.temperatureC[0] as number);
  return stack;
}

function traceStacks(
  { charge }: BatchSetup,
  table: VapourTable,
  count: number,
): readonly TraceStack[] {
  const amounts = charge.lightVolatiles;
  if (amounts === undefined) return [];
  return lightVolatiles.map((volatile) => {
    const mol = new Float64Array(count);
    const massMg = amounts[volatile.name] * (charge.volumeMl / 1000);
    mol[0] = massMg / 1000 / volatile.molarMassGPerMol;
    return {
      mol,
      risenMol: new Float64Array(count),
      volatilityRatio: tabulateVolatilityRatio(volatile, table),
    };
  });
}
