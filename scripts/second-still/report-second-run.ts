import type { MarkBody, RunInput, RunSettings } from '#shared-core';
import type { Random } from '../../shared-core/random/index.ts';
import type { ScoredRun, TrueSecond } from '../ensemble/scored-run.ts';
import { mostBiasK, type SecondDraw, type SecondKind } from './draw-second-run.ts';
import { runSecondStill } from './second-still.ts';

export interface SecondRun extends ScoredRun {
  readonly kind: SecondKind;
}

/** Shares of all ethanol, by volume, at which the receiver is read. */
const readAtShares = [0.1, 0.25, 0.4, 0.55, 0.7];
const cylinderSdShare = 0.02;

/** Runs what was drawn and reports it as probe and person would. */
export function runSecondDraw(draw: SecondDraw): SecondRun {
  const { kind, settings, still, heat, readsVolumes } = draw;
  const { samples, arrivalS, heatOffS } = runSecondStill(still, heat);
  const everyS = draw.random.uniform() < 0.75 ? 1 : 5;
  const inputs = [
    ...readings(draw, samples, arrivalS ?? 600, everyS),
    ...marks(draw, samples, arrivalS, heatOffS),
  ];
  return {
    kind,
    settings: silentFor(settings, everyS),
    samples,
    inputs: inputs.toSorted((a, b) => a.timeS - b.timeS),
    endS: samples.length - 1,
    heatOffS,
    readsVolumes,
  };
}

/** A slow logger is not lost between two readings. */
function silentFor(settings: RunSettings, everyS: number): RunSettings {
  const silenceS = Math.max(settings.probe.silenceS, 3 * everyS);
  return { ...settings, probe: { ...settings.probe, silenceS } };
}

/** The bulb with the probe's bias, drift, correlated noise, steps and faults. */
function readings(
  { kind, still, random }: SecondDraw,
  samples: readonly TrueSecond[],
  arrivalS: number,
  everyS: number,
): RunInput[] {
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const noiseK = Math.exp(between(Math.log(0.02), Math.log(0.2)));
  const keeps = Math.exp(-everyS / between(10, 20));
  const slowShare = between(0.3, 0.8);
  const biasK = between(-mostBiasK, mostBiasK);
  const driftKPerS = between(-0.08, 0.08) / 3600;
  const quantumK = [0.01, 0.0625, 0.1, 0.001][random.integer(0, 3)] as number;
  const dryK = kind === 'unwetted-bulb' ? between(2, 12) : 0;
  const swingS = between(60, 400);
  const faulty = kind === 'probe-faults';
  const endS = samples.length - 1;
  const gaps = Array.from({ length: faulty ? random.integer(1, 3) : 0 }, () => {
    const fromS = between(arrivalS, endS);
    return { fromS, toS: fromS + between(8, 90) };
  });
  const spikes = new Set(
    Array.from({ length: faulty ? random.integer(2, 7) : 0 }, () => random.integer(0, endS)),
  );
  let slow = random.normal();
  const wander = wanderOf(random.fork('wander'), everyS);
  const slowPart = slowPartOf(random.fork('slow part'), still.bulbS, everyS);
  const inputs: RunInput[] = [];
  for (let timeS = 0; timeS <= endS; timeS += everyS) {
    slow = keeps * slow + Math.sqrt(1 - keeps * keeps) * random.normal();
    const noise =
      noiseK * (Math.sqrt(slowShare) * slow + Math.sqrt(1 - slowShare) * random.normal());
    const bulbTemperatureC = slowPart((samples[timeS] as TrueSecond).bulbTemperatureC);
    const wanderK = wander();
    const dry =
      dryK * ((bulbTemperatureC - still.roomC) / 60) * (1 + 0.3 * Math.sin(timeS / swingS));
    const spike = spikes.has(timeS) ? (random.uniform() < 0.5 ? -1 : 1) * between(2, 60) : 0;
    if (gaps.some(({ fromS, toS }) => timeS >= fromS && timeS < toS)) continue;
    const read = bulbTemperatureC - dry + biasK + driftKPerS * timeS + noise + wanderK + spike;
    const value = Math.round(read / quantumK) * quantumK;
    inputs.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
  }
  return inputs;
}

/** Wander of 0.005 … 0.04 K that forgets in two minutes, as measured on a laboratory column; test/reference/real-traces. */
function wanderOf(random: Random, everyS: number): () => number {
  const sdK = 0.005 + 0.035 * random.uniform();
  const keeps = Math.exp(-everyS / 120);
  let wander = random.normal();
  return () => {
    wander = keeps * wander + Math.sqrt(1 - keeps * keeps) * random.normal();
    return sdK * wander;
  };
}

/** What a probe shows whose stem is slower than its tip: t90/t63 is 2.6 … 4.6 of real ones, 2.30 of one lag. */
function slowPartOf(random: Random, bulbS: number, everyS: number): (bulbC: number) => number {
  const share = 0.2 + 0.14 * random.uniform();
  const followed = -Math.expm1(-everyS / (bulbS * (3 + 3 * random.uniform())));
  let slowC: number | null = null;
  return (bulbC) => {
    slowC = slowC === null ? bulbC : slowC + followed * (bulbC - slowC);
    return (1 - share) * bulbC + share * slowC;
  };
}

/** What a busy person writes down, and when a hand is free. */
function marks(
  { heat, marksHeat, readsVolumes, still, random }: SecondDraw,
  samples: readonly TrueSecond[],
  arrivalS: number | null,
  heatOffS: number,
): RunInput[] {
  const made: { readonly timeS: number; readonly body: MarkBody }[] = [];
  const late = (low: number, high: number): number => low + (high - low) * random.uniform();
  if (marksHeat && arrivalS !== null) {
    made.push({ timeS: 0, body: { type: 'heat-on' } });
    for (const { fromS } of heat.shares) {
      made.push({ timeS: arrivalS + fromS + late(0, 4), body: { type: 'heat-eased' } });
    }
    for (const { fromS, toS } of heat.removals) {
      made.push({ timeS: arrivalS + fromS + late(0, 4), body: { type: 'heat-off' } });
      made.push({ timeS: arrivalS + toS + late(0, 4), body: { type: 'heat-on' } });
    }
  }
  if (readsVolumes) {
    const ethanolMl = (still.chargedMol * still.ethanolMoleFraction * 46.07) / 0.789;
    for (const share of readAtShares) {
      const atS = samples.findIndex(
        ({ distillateVolumeMl }) => distillateVolumeMl > share * ethanolMl,
      );
      if (atS < 0) break;
      const readMl = (samples[Math.max(0, atS - 5)] as TrueSecond).distillateVolumeMl;
      const volumeMl = Math.round(10 * readMl * (1 + cylinderSdShare * random.normal())) / 10;
      made.push({ timeS: atS + late(3, 15), body: { type: 'volume-read', volumeMl } });
    }
  }
  return made
    .filter(({ timeS }) => timeS < heatOffS)
    .toSorted((a, b) => a.timeS - b.timeS)
    .map(({ timeS, body }, index) => ({ kind: 'mark', timeS, markId: index + 1, mark: body }));
}
