import { requireInRange } from '../result/index.ts';
import type { RandomSource } from './random-source.ts';
import { createSpells } from './spells.ts';

/** How a probe departs from the truth. Everything left out is absent, except the power-on value. */
export interface ProbeFlaws {
  readonly random: RandomSource;
  /** Lag of the probe, time to 90 % of a step [s], 0 … 300; 0 when the temperature given is the bulb's. */
  readonly t90S?: number;
  /** Share of the response that is slower than the rest, as where a stem leads heat, 0 … 0.5; its time constant [s], 0.1 … 600. */
  readonly slowShare?: number;
  readonly slowShareS?: number;
  /** Standard deviation of independent noise [K], 0 … 5. */
  readonly whiteNoiseK?: number;
  /** Standard deviation of slow noise [K], 0 … 5, and the time over which it forgets (63 %) [s], 0.1 … 600. */
  readonly slowNoiseK?: number;
  readonly slowNoiseS?: number;
  /** Standard deviation of slow wander [K], 0 … 5, and the time over which it forgets (63 %) [s], 0.1 … 3600. */
  readonly wanderK?: number;
  readonly wanderS?: number;
  /** Constant error [K], −10 … 10. */
  readonly biasK?: number;
  /** Change of the error with time [K/h], −10 … 10. */
  readonly driftKPerHour?: number;
  /** Step between values the probe can report [K], 0 … 5; 1/16 for common digital ones, 0 for none. */
  readonly quantumK?: number;
  /** Mean number of dropouts per hour, 0 … 3600, and their mean length [s], 0.1 … 3600. */
  readonly dropoutsPerHour?: number;
  readonly dropoutS?: number;
  /** Mean number of single wrong readings per hour, 0 … 3600, and their size (standard deviation) [K], 0 … 500. */
  readonly spikesPerHour?: number;
  readonly spikeK?: number;
  /** Mean number of bursts of fault values per hour, 0 … 3600, their mean length [s], 0.1 … 600, and the value shown [°C]. */
  readonly burstsPerHour?: number;
  readonly burstS?: number;
  readonly faultC?: number;
  /** Readings after power-on that show 85.0 °C, the reset value of common digital sensors [readings], 0 … 100. */
  readonly powerOnReadings?: number;
  /** The same value again after every dropout: the sensor lost power, not only the line. */
  readonly resetsOnDropout?: boolean;
}

/** A probe that is asked for readings in order of time. */
export interface ProbeSignal {
  /**
   * What the probe reports at this time; null when nothing arrives.
   *
   * @param timeS not before the last one [s]
   * @param temperatureC the true temperature around it [°C]
   */
  read(timeS: number, temperatureC: number): number | null;
}

const powerOnC = 85;

/**
 * A probe with lag, noise, quantisation, bias, drift, dropouts and spikes, all from one random source.
 *
 * Lag `dT/dt = (T_true − T)·ln 10/t90`, exact for a truth constant between readings; a share s of the response has a time constant of
 * its own, so that a step is followed as `1 − (1 − s) e^(−t/τ₁) − s e^(−t/τ₂)`. Slow noise and wander are
 * Ornstein–Uhlenbeck processes, `n' = n e^(−Δt/τ) + σ √(1 − e^(−2Δt/τ)) z`, so their size does not depend on how
 * often the probe is read.
 *
 * @param flaws valid ranges and units stand beside each field
 * @throws OutOfRangeError for flaws outside their ranges, or a NaN temperature
 *
 * Source: first-order lag and Ornstein–Uhlenbeck process, any text on stochastic processes, e.g. Gillespie,
 * Phys. Rev. E 54 (1996) 2084 (from memory); 1/16 °C and 85.0 °C are those of common 1-wire sensors.
 * @example
 * createProbeSignal({ random: createRandom(1), quantumK: 1 / 16 }).read(0, 78.2) // => 78.1875
 */
export function createProbeSignal(flaws: ProbeFlaws): ProbeSignal {
  const settings = { ...perfect, ...flaws };
  requireSoundFlaws(settings);
  const { random } = settings;
  const dropouts = createSpells(random, settings.dropoutsPerHour, settings.dropoutS);
  const spikes = createSpells(random, settings.spikesPerHour, 0);
  const hasBursts = settings.burstsPerHour > 0;
  const bursts = hasBursts ? createSpells(random, settings.burstsPerHour, settings.burstS) : null;
  let previousS: number | undefined;
  let sensorC = 0;
  let slowC = 0;
  let slowNoiseK = 0;
  let wanderK = 0;
  let powerOnLeft = settings.powerOnReadings;
  let wasOut = false;

  return {
    read: (timeS, temperatureC) => {
      requireInRange('temperature at the probe', temperatureC, -50, 500, '°C');
      requireInRange('time', timeS, previousS ?? 0, 1e9, 's');
      const elapsedS = previousS === undefined ? Number.POSITIVE_INFINITY : timeS - previousS;
      previousS = timeS;
      const timeConstantS = settings.t90S / Math.LN10;
      sensorC = followed(sensorC, temperatureC, elapsedS, timeConstantS);
      slowC = followed(slowC, temperatureC, elapsedS, settings.slowShareS);
      slowNoiseK = wandered(
        slowNoiseK,
        settings.slowNoiseK,
        elapsedS / settings.slowNoiseS,
        random,
      );
      // Only where there is any: other seeds keep their draws.
      if (settings.wanderK > 0)
        wanderK = wandered(wanderK, settings.wanderK, elapsedS / settings.wanderS, random);
      const noiseK = wanderK + slowNoiseK + settings.whiteNoiseK * random.normal();
      const spikeK = settings.spikeK * random.normal();
      const isSpike = spikes.covers(timeS);
      const isFault = bursts?.covers(timeS) ?? false;
      const isOut = dropouts.covers(timeS);
      if (wasOut && !isOut && settings.resetsOnDropout) powerOnLeft = settings.powerOnReadings;
      wasOut = isOut;
      if (isOut) return null;
      if (powerOnLeft > 0) {
        powerOnLeft -= 1;
        return powerOnC;
      }
      if (isFault) return settings.faultC;
      const errorK = settings.biasK + (settings.driftKPerHour * timeS) / 3600;
      const followedC = sensorC + settings.slowShare * (slowC - sensorC);
      const value = followedC + errorK + noiseK + (isSpike ? spikeK : 0);
      return settings.quantumK === 0
        ? value
        : Math.round(value / settings.quantumK) * settings.quantumK;
    },
  };
}

/** Where something that followed a temperature so far stands after following it for so long. */
function followed(
  beforeC: number,
  temperatureC: number,
  elapsedS: number,
  timeConstantS: number,
): number {
  if (timeConstantS === 0 || elapsedS === Number.POSITIVE_INFINITY) return temperatureC;
  return beforeC - Math.expm1(-elapsedS / timeConstantS) * (temperatureC - beforeC);
}

/** One step of an Ornstein–Uhlenbeck process of this standard deviation, over so many of its memories. */
function wandered(beforeK: number, sdK: number, memories: number, random: RandomSource): number {
  const kept = Math.exp(-memories);
  return kept * beforeK + sdK * Math.sqrt(1 - kept * kept) * random.normal();
}

const perfect = {
  t90S: 0,
  slowShare: 0,
  slowShareS: 60,
  whiteNoiseK: 0,
  slowNoiseK: 0,
  slowNoiseS: 15,
  wanderK: 0,
  wanderS: 120,
  biasK: 0,
  driftKPerHour: 0,
  quantumK: 0,
  dropoutsPerHour: 0,
  dropoutS: 5,
  spikesPerHour: 0,
  spikeK: 0,
  burstsPerHour: 0,
  burstS: 3,
  faultC: 2047.75,
  powerOnReadings: 0,
  resetsOnDropout: false,
} as const;

function requireSoundFlaws(flaws: Required<ProbeFlaws>): void {
  requireInRange('lag', flaws.t90S, 0, 300, 's');
  requireInRange('slow share of the response', flaws.slowShare, 0, 0.5, '');
  requireInRange('time constant of the slow share', flaws.slowShareS, 0.1, 600, 's');
  requireInRange('white noise', flaws.whiteNoiseK, 0, 5, 'K');
  requireInRange('slow noise', flaws.slowNoiseK, 0, 5, 'K');
  requireInRange('memory of the slow noise', flaws.slowNoiseS, 0.1, 600, 's');
  requireInRange('wander', flaws.wanderK, 0, 5, 'K');
  requireInRange('memory of the wander', flaws.wanderS, 0.1, 3600, 's');
  requireInRange('bias', flaws.biasK, -10, 10, 'K');
  requireInRange('drift', flaws.driftKPerHour, -10, 10, 'K/h');
  requireInRange('quantum', flaws.quantumK, 0, 5, 'K');
  requireInRange('dropouts', flaws.dropoutsPerHour, 0, 3600, '1/h');
  requireInRange('length of a dropout', flaws.dropoutS, 0.1, 3600, 's');
  requireInRange('spikes', flaws.spikesPerHour, 0, 3600, '1/h');
  requireInRange('size of a spike', flaws.spikeK, 0, 500, 'K');
  requireInRange('bursts of fault values', flaws.burstsPerHour, 0, 3600, '1/h');
  requireInRange('length of a burst', flaws.burstS, 0.1, 600, 's');
  requireInRange('fault value', flaws.faultC, -500, 3000, '°C');
  requireInRange('power-on readings', flaws.powerOnReadings, 0, 100, '');
}
