import { OutOfRangeError, requireInRange } from '../result/index.ts';
import type { BatchSetup } from './batch-setup.ts';
import { heaterPowerRangeW } from './heater-power-range.ts';

/** Throws unless every number of the setup lies in the range that stands beside its field. */
export function requireSoundSetup(setup: BatchSetup): void {
  const { charge, rig } = setup;
  requireInRange('charge volume', charge.volumeMl, 10, 20_000, 'mL');
  requireInRange('charge strength', charge.strengthAbv, 0, 95, '% vol');
  requireInRange('charge temperature', charge.temperatureC ?? 20, 0, 70, '°C');
  requireInRange('room temperature', setup.roomTemperatureC ?? 20, 5, 40, '°C');
  requireInRange('step', setup.stepS ?? 0.5, 0.02, 2, 's');
  requireInRange('least strength', setup.leastStrengthAbv ?? 80, 1, 95, '% vol');
  requireInRange('plates', rig.plates, 0, 40, '');
  requireInRange('returned fraction', rig.returnedFraction, 0, 1, '');
  for (const [part, name] of [
    [rig.flask, 'flask'],
    [rig.column, 'column'],
    [rig.head, 'head'],
  ] as const) {
    requireInRange(`heat capacity of the ${name}`, part.heatCapacityJPerK, 1, 5000, 'J/K');
    requireInRange(`heat loss of the ${name}`, part.lossWPerK, 0, 5, 'W/K');
  }
  requireInRange('hold-up of the column', rig.column.holdUpMl, 0.1, 500, 'mL');
  requireInRange('drain time of the column', rig.column.drainS, 1, 120, 's');
  requireInRange('film of the head', rig.head.filmWPerK, 0.1, 50, 'W/K');
  requireInRange('vapour space of the head', rig.head.vapourSpaceMl, 1, 1000, 'mL');
  requireInRange('receding time of the head', rig.head.recedeS, 1, 120, 's');
  requireInRange('distillate temperature', rig.condenser.distillateTemperatureC, 0, 60, '°C');
  requireInRange('drain time of the condenser', rig.condenser.drainS, 1, 120, 's');
  requireInRange('lag of the wet bulb', rig.bulb.wetT90S, 0.1, 300, 's');
  requireInRange('lag of the dry bulb', rig.bulb.dryT90S, 0.1, 1000, 's');
  requireInRange(
    'heater power',
    rig.heater.powerW,
    heaterPowerRangeW.low,
    heaterPowerRangeW.high,
    'W',
  );
  requireInRange('time constant of the heater', rig.heater.timeConstantS, 0.1, 600, 's');
  for (const amount of Object.values(charge.lightVolatiles ?? {})) {
    requireInRange('light volatile in the charge', amount, 0, 5000, 'mg/L');
  }
  requireOrder(setup.schedule?.map(({ timeS }) => timeS) ?? [], 'time of an event');
  if (typeof setup.pressureKPa !== 'number') {
    requireOrder(
      setup.pressureKPa.map(({ timeS }) => timeS),
      'time of a pressure',
    );
  }
}

function requireOrder(timesS: readonly number[], quantity: string): void {
  let previousS = 0;
  for (const timeS of timesS) {
    if (!(timeS >= previousS && timeS < 1e7)) {
      throw new OutOfRangeError({ quantity, value: timeS, low: previousS, high: 1e7, unit: 's' });
    }
    previousS = timeS;
  }
}
