import type { Calibration } from './calibration.ts';
import type { SensorKind } from './sensor-tolerance.ts';

/** A head reading and everything that may be wrong with it. */
export interface ProbeBudgetSetup {
  readonly temperatureC: number;
  readonly sensor: SensorKind;
  /** Replaces the sensor's tolerance and, for two wires, the leads. */
  readonly calibration?: Calibration;
  /** Limits of drift since the calibration, ±; none when left out. */
  readonly driftK?: number;
  /** Smallest step of the reading. */
  readonly resolutionK: number;
  /** Standard deviation of one reading. */
  readonly noiseK: number;
  readonly lag?: {
    readonly timeConstantS: number;
    /** Limits of the time constant, ±; 30 % when left out. */
    readonly timeConstantToleranceS?: number;
    readonly slopeKPerS: number;
    /** From {@link lagCorrectedTemperature}; `null` when the reading is not corrected for lag. */
    readonly noisePenalty: number | null;
  };
  /** A platinum sensor on two uncompensated wires. */
  readonly leads?: { readonly resistanceOhm: number; readonly r0Ohm: number };
  /** Limits of the thermometer at a thermocouple's terminals, ±. */
  readonly coldJunctionToleranceK?: number;
  /** Limits of the error by heat along the stem, ±; 0.1 K when left out. */
  readonly immersionK?: number;
}
