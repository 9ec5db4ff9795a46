/**
 * Speed of the batch simulator: simulated over real time, and the cost of one plate and step as a ratio to one
 * plain bubble-point solve in the same run.
 *
 * Usage: npx tsx scripts/bench/column.bench.ts
 */
import { createBatchSimulation, pearFermentSetup, planRun, simulateBatch } from '#shared-core';
import type { BatchSetup } from '../../shared-core/column/index.ts';
import { isEntryPoint } from '../checks/is-entry-point.ts';
import { plainBubblePointC } from './plain-bubble-point.ts';

const pressureKPa = 99.4;
const threeHoursS = 3 * 3600;
const repeats = 7;

/** Middle of several timings [s], after two that only warm up. */
function secondsFor(work: () => void): number {
  const seconds = Array.from({ length: repeats + 2 }, () => {
    const from = performance.now();
    work();
    return (performance.now() - from) / 1000;
  });
  return seconds.slice(2).sort((a, b) => a - b)[repeats >> 1] as number;
}

export function run(): void {
  // Eight plates and the pot, with light volatiles: the fullest case.
  const setup: BatchSetup = { ...pearFermentSetup(), pressureKPa };
  const { lightVolatiles: _, ...plainCharge } = setup.charge;
  const withoutTraces: BatchSetup = { ...setup, charge: plainCharge };
  const solves = 20_000;
  const plainS =
    secondsFor(() => {
      for (let index = 1; index <= solves; index++)
        plainBubblePointC(index / (solves + 1), pressureKPa);
    }) / solves;
  const fullS = secondsFor(() => createBatchSimulation(setup).advance(threeHoursS));
  const bareS = secondsFor(() => createBatchSimulation(withoutTraces).advance(threeHoursS));
  const sampledS = secondsFor(() => {
    simulateBatch(setup, { durationS: threeHoursS });
  });
  const planS = secondsFor(() => {
    planRun({ ...setup, pressureKPa, leastStrengthAbv: 80, collect: { kind: 'heat', powerW: 64 } });
  });
  const stageSteps = 9 * (threeHoursS / (setup.stepS ?? 0.5));
  const row = (name: string, seconds: number) => {
    const faster = Math.round(threeHoursS / seconds).toLocaleString('en');
    const solvesEach = (seconds / stageSteps / plainS).toFixed(3);
    console.log(
      `${name.padEnd(44)} ${faster.padStart(9)} × real time   ${solvesEach} solves a plate and step`,
    );
  };
  row('3 h, 8 plates', bareS);
  row('3 h, 8 plates, three light volatiles', fullS);
  row('the same, with a sample every second', sampledS);
  console.log(`plan of 48 runs: ${(planS / fullS).toFixed(1)} × the cost of one such 3 h run`);
  console.log(`(plain bubble-point solve: ${(plainS * 1e6).toFixed(2)} µs on this computer)`);
}

if (isEntryPoint(import.meta.url)) run();
