export type { BatchAction, BatchEvent } from './batch-event.ts';
export type { BatchSetup, Charge, LightVolatiles, PressurePoint } from './batch-setup.ts';
export type { BatchLedger, BatchState, ReceiverState } from './batch-state.ts';
export { type BatchSimulation, createBatchSimulation } from './create-batch-simulation.ts';
export {
  createProbeSignal,
  type ProbeFlaws,
  type ProbeSignal,
} from './create-probe-signal.ts';
export { heaterPowerForDripRateW, heaterPowerForRefluxW } from './heater-power.ts';
export { heaterPowerRangeW } from './heater-power-range.ts';
export { pearFermentSetup } from './pear-ferment-setup.ts';
export type { RandomSource } from './random-source.ts';
export type {
  BulbPart,
  ColumnPart,
  CondenserPart,
  GlassPart,
  HeadPart,
  HeaterPart,
  Rig,
} from './rig.ts';
export { type BatchDuration, type BatchRun, simulateBatch } from './simulate-batch.ts';
export * from './steady/index.ts';
export { type TeachingRigName, teachingRigs } from './teaching-rigs.ts';
export type { TruthMarkers } from './truth-markers.ts';
