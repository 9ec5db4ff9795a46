/** The simulated still: batch column, heater, probe; and steady plate stepping. */
export type { BatchEvent } from './batch-event.ts';
export type { BatchSetup, Charge } from './batch-setup.ts';
export type { BatchState } from './batch-state.ts';
export { createBatchSimulation } from './create-batch-simulation.ts';
export { createProbeSignal, type ProbeFlaws } from './create-probe-signal.ts';
export { heaterPowerForDripRateW, heaterPowerForRefluxW } from './heater-power.ts';
export { heaterPowerRangeW } from './heater-power-range.ts';
export { pearFermentSetup } from './pear-ferment-setup.ts';
export type { Rig } from './rig.ts';
export { simulateBatch } from './simulate-batch.ts';
export { type EquilibriumCurve, equilibriumCurve } from './steady/equilibrium-curve.ts';
export { fenskeStages } from './steady/fenske-stages.ts';
export { minimumRefluxRatio } from './steady/minimum-reflux-ratio.ts';
export { type BatchYield, simpleBatch } from './steady/simple-batch.ts';
export { distillateAboveStages, potBelowStages, stepPlates } from './steady/step-plates.ts';
export { teachingRigs } from './teaching-rigs.ts';
