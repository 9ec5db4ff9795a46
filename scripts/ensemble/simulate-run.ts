import { azeotrope, createBatchSimulation, createProbeSignal, type RunInput } from '#shared-core';
import type { BatchState } from '../../shared-core/column/index.ts';
import { equilibriumModelUncertaintyK } from '../../shared-core/equilibrium/index.ts';
import type { DrawnRun } from './draw-run.ts';
import { createReadingsBeside } from './readings-beside.ts';
import type { ScoredRun } from './scored-run.ts';

/** What truly happened, second by second, and what the probe and the person reported. */
export interface SimulatedRun extends ScoredRun {
  readonly drawn: DrawnRun;
}

const longestS = 6 * 3600;
const coolDownS = 900;
/** The run goes on well past any limit, as if nobody listened; then the heat is taken off. */
const endsBelowAbv = 45;

export function simulateRun(drawn: DrawnRun): SimulatedRun {
  const still = createBatchSimulation(drawn.setup);
  const samples: BatchState[] = [still.state];
  let heatOffS = longestS;
  let weakSinceS: number | null = null;
  for (let timeS = 1; timeS <= Math.min(longestS, heatOffS + coolDownS); timeS += 1) {
    still.advance(timeS);
    const { state } = still;
    samples.push(state);
    if (timeS >= heatOffS) continue;
    const weak = state.vapourAtHead && state.headVapourStrengthAbv < endsBelowAbv;
    weakSinceS = weak ? (weakSinceS ?? timeS) : null;
    const dry = state.potVolumeMl < 0.15 * drawn.setup.charge.volumeMl;
    const lasted = weakSinceS !== null && timeS - weakSinceS > 600;
    if (lasted || dry || timeS === longestS - coolDownS) {
      heatOffS = timeS;
      still.applyEvent({ kind: 'heat-off' });
    }
  }
  return {
    drawn,
    settings: drawn.settings,
    readsVolumes: drawn.volumeEveryS !== null,
    samples,
    inputs: report(drawn, samples, heatOffS),
    endS: samples.length - 1,
    heatOffS,
  };
}

function report(drawn: DrawnRun, samples: readonly BatchState[], heatOffS: number): RunInput[] {
  const bulb = createProbeSignal(drawn.bulbFlaws);
  const probe = createProbeSignal(drawn.flaws);
  const bursts = createProbeSignal(drawn.bursts);
  const inputs: RunInput[] = [];
  let markId = 0;
  const mark = (timeS: number, body: Extract<RunInput, { kind: 'mark' }>['mark']): void => {
    markId += 1;
    inputs.push({ kind: 'mark', timeS, markId, mark: body });
  };
  const easedS = Math.round(
    drawn.setup.schedule?.find(({ kind }) => kind === 'heat-eased')?.timeS ?? -1,
  );
  const removals = drawn.marksRemovals
    ? removalMarks(drawn)
    : new Map<number, 'heat-off' | 'heat-on'>();
  let nextVolumeS = drawn.volumeEveryS ?? Number.POSITIVE_INFINITY;
  if (drawn.marksHeat) mark(0, { type: 'heat-on' });
  const besideHead = createReadingsBeside(drawn);
  for (const sample of samples) {
    const { timeS, bulbTemperatureC, distillateVolumeMl, pressureKPa } = sample;
    inputs.push(...besideHead(sample));
    if (drawn.marksHeat && timeS === easedS) mark(timeS, { type: 'heat-eased' });
    const removal = timeS < heatOffS ? removals.get(timeS) : undefined;
    if (removal !== undefined) mark(timeS, { type: removal });
    if (drawn.marksHeat && timeS === heatOffS) mark(timeS, { type: 'heat-off' });
    if (timeS >= nextVolumeS) {
      nextVolumeS += drawn.volumeEveryS ?? 0;
      // A measuring cylinder is read to half a millilitre.
      const volumeMl = Math.round(2 * distillateVolumeMl) / 2;
      if (volumeMl > 0) mark(timeS, { type: 'volume-read', volumeMl });
    }
    if (timeS % drawn.sampleEveryS !== 0) continue;
    const offK = drawn.mixtureOffSds * mixtureSdK(bulbTemperatureC, pressureKPa);
    const shownC = probe.read(timeS, bulb.read(timeS, bulbTemperatureC + offK) ?? bulbTemperatureC);
    const overlaidC = bursts.read(timeS, bulbTemperatureC);
    const isFault = overlaidC === drawn.bursts.faultC;
    const value = isFault ? overlaidC : shownC;
    if (value === null) continue;
    // Whoever reads a line of a probe knows its fault value.
    const quality = isFault ? 'bad' : 'good';
    inputs.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality });
  }
  return inputs;
}

/** How far vapour of the strength that this temperature means may really stand from there [K]. */
function mixtureSdK(temperatureC: number, pressureKPa: number): number {
  const temperatureAboveAzeotropeK = temperatureC - azeotrope(pressureKPa).temperatureC;
  return equilibriumModelUncertaintyK({ temperatureAboveAzeotropeK, pressureKPa });
}

/** Heat taken away for a moment, as a careful person marks it: off, and on again. */
function removalMarks({ setup }: DrawnRun): ReadonlyMap<number, 'heat-off' | 'heat-on'> {
  const marks = new Map<number, 'heat-off' | 'heat-on'>();
  for (const { kind, timeS } of setup.schedule ?? []) {
    if (kind === 'heat-removed') marks.set(Math.round(timeS), 'heat-off');
    if (kind === 'heat-returned') marks.set(Math.round(timeS), 'heat-on');
  }
  return marks;
}
