import { requireInRange } from '../result/index.ts';
import type { BatchSetup } from './batch-setup.ts';
import type { BatchLedger, BatchState } from './batch-state.ts';
import { createBatchSimulation } from './create-batch-simulation.ts';
import { type TruthMarkers, truthMarkers } from './truth-markers.ts';

/** When a simulated run ends, and how often it is looked at. */
export interface BatchDuration {
  /** Longest duration [s], 1 … 1e6; 5400 when left out. */
  readonly durationS?: number;
  /** Interval between samples [s], at least the step; 1 when left out. */
  readonly sampleEveryS?: number;
  /** Ends the run early, e.g. once the vapour at the head is weak. */
  readonly stopWhen?: (sample: BatchState) => boolean;
}

/** A whole run with its truth. */
export interface BatchRun {
  readonly samples: readonly BatchState[];
  readonly truth: TruthMarkers;
  readonly ledgerAtStart: BatchLedger;
  readonly ledgerAtEnd: BatchLedger;
}

/** A pot this nearly empty ends the run: 3 % of the charge. */
const dryShare = 0.03;

/**
 * Runs a batch rectification from cold to the end: solves the stage equations of
 * {@link createBatchSimulation} and samples them.
 *
 * It ends after `durationS` [s], when `stopWhen` says so, or when the pot is nearly dry, whichever comes first.
 *
 * @param setup charge, rig, pressure and schedule; valid ranges and units stand beside each field
 * @returns samples at equal intervals, the markers of the truth, and the books of ethanol, water and heat
 * @throws OutOfRangeError for a setup outside its ranges
 *
 * Source: see {@link createBatchSimulation}.
 * @example
 * const run = simulateBatch(pearFermentSetup(), { durationS: 4200, sampleEveryS: 5 });
 * run.samples.length // => 841
 * run.truth.strongestAbv // ≈ 92 ± 3
 * run.ledgerAtEnd.ethanolMol / run.ledgerAtStart.ethanolMol // ≈ 1 ± 1e-9
 */
export function simulateBatch(setup: BatchSetup, duration: BatchDuration = {}): BatchRun {
  const { durationS = 5400, sampleEveryS = 1, stopWhen } = duration;
  requireInRange('duration', durationS, 1, 1e6, 's');
  requireInRange('sample interval', sampleEveryS, setup.stepS ?? 0.5, durationS, 's');
  const simulation = createBatchSimulation(setup);
  const ledgerAtStart = simulation.ledger;
  const first = simulation.state;
  const samples = [first];
  for (let index = 1; index * sampleEveryS <= durationS; index++) {
    simulation.advance(index * sampleEveryS);
    const sample = simulation.state;
    samples.push(sample);
    if (sample.potVolumeMl < dryShare * first.potVolumeMl || stopWhen?.(sample)) break;
  }
  return {
    samples,
    truth: truthMarkers(samples, setup.leastStrengthAbv ?? 80),
    ledgerAtStart,
    ledgerAtEnd: simulation.ledger,
  };
}
