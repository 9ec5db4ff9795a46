import { requireInRange } from '../result/index.ts';
import type { RandomSource } from './random-source.ts';
import { createSpells } from './spells.ts';

/** How a probe departs from the truth. Everything left out is absent, except the power-on value. */
export interface ProbeFlaws {
  readonly random: RandomSource;
  /** Lag of the probe, time to 90 % of a step [s], 0 … 300; 0 when the temperature given is the bulb's. */
  readonly t90S?: number;
  /** Standard deviation of independent noise [K], 0 … 5. */
  readonly whiteNoiseK?: number;
  /** Standard deviation of slow noise [K], 0 … 5, and the time over which it forgets (63 %) [s], 0.1 … 600. */
  readonly slowNoiseK?: number;
  readonly slowNoiseS?: number;
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
 * Lag `dT/dt = (T_true − T)·ln 10/t90`, exact for a truth constant between readings; slow noise is an
 * Ornstein–Uhlenbeck process, `n' = n e^(−Δt/τ) + σ √(1 − e^(−2Δt/τ)) z`, so its size does not depend on how
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
  let previousS: number | undefined;
  let sensorC = 0;
  let slowNoiseK = 0;
  let powerOnLeft = settings.powerOnReadings;
  let wasOut = false;

  return {
    read: (timeS, temperatureC) => {
      requireInRange('temperature at the probe', temperatureC, -50, 500, '°C');
      requireInRange('time', timeS, previousS ?? 0, 1e9, 's');
      const elapsedS = previousS === undefined ? Number.POSITIVE_INFINITY : timeS - previousS;
      previousS = timeS;
      const followed =
        settings.t90S === 0 ? 1 : -Math.expm1((-Math.LN10 * elapsedS) / settings.t90S);
      sensorC = followed === 1 ? temperatureC : sensorC + followed * (temperatureC - sensorC);
      const kept = Math.exp(-elapsedS / settings.slowNoiseS);
      slowNoiseK =
        kept * slowNoiseK + settings.slowNoiseK * Math.sqrt(1 - kept * kept) * random.normal();
      const noiseK = slowNoiseK + settings.whiteNoiseK * random.normal();
      const spikeK = settings.spikeK * random.normal();
      const isSpike = spikes.covers(timeS);
      const isOut = dropouts.covers(timeS);
      if (wasOut && !isOut && settings.resetsOnDropout) powerOnLeft = settings.powerOnReadings;
      wasOut = isOut;
      if (isOut) return null;
      if (powerOnLeft > 0) {
        powerOnLeft -= 1;
        return powerOnC;
      }
      const errorK = settings.biasK + (settings.driftKPerHour * timeS) / 3600;
      const value = sensorC + errorK + noiseK + (isSpike ? spikeK : 0);
      return settings.quantumK === 0
        ? value
        : Math.round(value / settings.quantumK) * settings.quantumK;
    },
  };
}

const perfect = {
  t90S: 0,
  whiteNoiseK: 0,
  slowNoiseK: 0,
  slowNoiseS: 15,
  biasK: 0,
  driftKPerHour: 0,
  quantumK: 0,
  dropoutsPerHour: 0,
  dropoutS: 5,
  spikesPerHour: 0,
  spikeK: 0,
  powerOnReadings: 0,
  resetsOnDropout: false,
} as const;

function requireSoundFlaws(flaws: Required<ProbeFlaws>): void {
  requireInRange('lag', flaws.t90S, 0, 300, 's');
  requireInRange('white noise', flaws.whiteNoiseK, 0, 5, 'K');
  requireInRange('slow noise', flaws.slowNoiseK, 0, 5, 'K');
  requireInRange('memory of the slow noise', flaws.slowNoiseS, 0.1, 600, 's');
  requireInRange('bias', flaws.biasK, -10, 10, 'K');
  requireInRange('drift', flaws.driftKPerHour, -10, 10, 'K/h');
  requireInRange('quantum', flaws.quantumK, 0, 5, 'K');
  requireInRange('dropouts', flaws.dropoutsPerHour, 0, 3600, '1/h');
  requireInRange('length of a dropout', flaws.dropoutS, 0.1, 3600, 's');
  requireInRange('spikes', flaws.spikesPerHour, 0, 3600, '1/h');
  requireInRange('size of a spike', flaws.spikeK, 0, 500, 'K');
  requireInRange('power-on readings', flaws.powerOnReadings, 0, 100, '');
}
