import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import { gasConstantJPerMolK } from '../thermo/index.ts';
import { type AirPressureCourse, airPressureCourse } from './air-pressure-course.ts';
import type { BatchSetup } from './batch-setup.ts';
import { type Collection, emptyCollection, stepCondenser } from './condenser.ts';
import { heatContent, liquidHeatJPerMol } from './heat-content.ts';
import { type Heater, stepHeater } from './heater.ts';
import { chargedStack, type StageStack } from './stage-stack.ts';
import { coldHead, type HeadConditions, type StillHead, stepStillHead } from './still-head.ts';
import { calmSurge, observeBoilUp, potReleaseMol, type Surge } from './surge.ts';
import { sweepLiquidDown } from './sweep-liquid-down.ts';
import { type SweepConditions, sweepVapourUp } from './sweep-vapour-up.ts';

const { zeroC, liquidEthanolJPerMolK, liquidWaterJPerMolK } = heatContent;

/** Heat that crossed the still's border since the run began [J]. */
export interface HeatBooks {
  heatInJ: number;
  lostJ: number;
  coolingWaterJ: number;
  distillateJ: number;
}

/** All that changes while a run is simulated. Mutable, and private to the simulation. */
export interface BatchMachine {
  readonly setup: BatchSetup;
  readonly stepS: number;
  readonly roomTemperatureC: number;
  readonly limitMoleFraction: number;
  readonly pressure: AirPressureCourse;
  readonly stack: StageStack;
  readonly head: StillHead;
  readonly collection: Collection;
  readonly heater: Heater;
  readonly surge: Surge;
  readonly books: HeatBooks;
  readonly sweep: SweepConditions;
  readonly headConditions: HeadConditions;
  /** What runs down in one step from the column and from the condenser, and how far the heater follows. */
  readonly columnDrain: number;
  readonly condenserDrain: number;
  readonly heaterFollows: number;
  stepCount: number;
  draughtUntilS: number;
  draughtFactor: number;
  /** Heat into the flask in the last step [W]. */
  heatW: number;
  /** Light volatiles in the vapour at the head [mol/mol]. */
  headTraceMoleFraction: number;
}

export function buildBatchMachine(setup: BatchSetup): BatchMachine {
  const { rig } = setup;
  const stepS = setup.stepS ?? 0.5;
  const roomTemperatureC = setup.roomTemperatureC ?? 20;
  const pressure = airPressureCourse(setup.pressureKPa);
  const stack = chargedStack(setup, roomTemperatureC, pressure.table);
  return {
    setup,
    stepS,
    roomTemperatureC,
    limitMoleFraction: moleFractionFromStrength(setup.leastStrengthAbv ?? 80),
    pressure,
    stack,
    head: coldHead(roomTemperatureC),
    collection: emptyCollection(rig.returnedFraction, stack.traces.length),
    heater: { setW: 0, givesW: 0, removed: false },
    surge: calmSurge(),
    books: { heatInJ: 0, lostJ: 0, coolingWaterJ: 0, distillateJ: 0 },
    sweep: { heatJ: 0, stepS, roomTemperatureC, lossFactor: 1, potReleaseMol: 0 },
    headConditions: { rig, stepS, roomTemperatureC, lossFactor: 1, lighterByK: 0 },
    columnDrain: -Math.expm1(-stepS / rig.column.drainS),
    condenserDrain: -Math.expm1(-stepS / rig.condenser.drainS),
    heaterFollows: -Math.expm1(-stepS / rig.heater.timeConstantS),
    stepCount: 0,
    draughtUntilS: Number.NEGATIVE_INFINITY,
    draughtFactor: 1,
    heatW: 0,
    headTraceMoleFraction: 0,
  };
}

/** Time since the run began [s]; counted in steps so that it never drifts. */
export function machineTimeS(machine: BatchMachine): number {
  return machine.stepCount * machine.stepS;
}

/** One step of the whole still: vapour up, liquid down, head, condenser. */
export function stepBatchMachine(machine: BatchMachine): void {
  const { setup, stepS, pressure, stack, head, books, sweep, headConditions, collection } = machine;
  const { rig } = setup;
  const timeS = machineTimeS(machine);
  pressure.follow(timeS);
  const lossFactor = timeS < machine.draughtUntilS ? machine.draughtFactor : 1;

  machine.heatW = stepHeater(machine.heater, machine.heaterFollows);
  sweep.heatJ = machine.heatW * stepS;
  sweep.lossFactor = lossFactor;
  sweep.potReleaseMol = potReleaseMol(machine.surge, timeS, stepS);
  books.heatInJ += sweep.heatJ;
  books.lostJ += sweepVapourUp(stack, pressure.table, sweep);
  observeBoilUp(machine.surge, timeS, stepS, (stack.risenMol[0] as number) / stepS);

  feelLightVolatiles(machine);
  sweepLiquidDown(stack, machine.columnDrain);
  headConditions.lossFactor = lossFactor;
  books.lostJ += stepStillHead(head, stack, pressure.table, headConditions);
  books.coolingWaterJ += stepCondenser(
    collection,
    head,
    stack,
    rig,
    machine.limitMoleFraction,
    machine.condenserDrain,
  );
  books.distillateJ +=
    collection.condensedMol *
    liquidHeatJPerMol(head.vapourEthanolMoleFraction, rig.condenser.distillateTemperatureC);
  readTemperatures(stack);
  machine.stepCount += 1;
}

/** Liquid has moved since the vapour rose: reads every temperature from its heat again. */
function readTemperatures(stack: StageStack): void {
  const { energyJ, glassJPerK, ethanolMol, waterMol, temperatureC } = stack;
  for (let stage = 0; stage < stack.count; stage++) {
    const capacity =
      (glassJPerK[stage] as number) +
      (ethanolMol[stage] as number) * liquidEthanolJPerMolK +
      (waterMol[stage] as number) * liquidWaterJPerMolK;
    temperatureC[stage] = zeroC + (energyJ[stage] as number) / capacity;
  }
}

/**
 * A trace that stays in the vapour lowers the pressure left for ethanol and water: by Clausius and Clapeyron
 * the dew point falls by `R T²/ΔH · Σ y (1 − 1/K)`.
 */
function feelLightVolatiles(machine: BatchMachine): void {
  const { stack, head } = machine;
  const top = stack.count - 1;
  const vapour = stack.risenMol[top] as number;
  if (stack.traces.length === 0 || vapour === 0) return;
  const liquid = (stack.ethanolMol[top] as number) + (stack.waterMol[top] as number);
  let traces = 0;
  let lift = 0;
  for (const trace of stack.traces) {
    const y = (trace.risenMol[top] as number) / vapour;
    const x = (trace.mol[top] as number) / liquid;
    traces += y;
    lift += y - x;
  }
  const kelvin = head.vapourTemperatureC + 273.15;
  machine.headTraceMoleFraction = traces;
  machine.headConditions.lighterByK =
    ((gasConstantJPerMolK * kelvin * kelvin) / heatContent.vaporizationEthanolJPerMol) * lift;
}
