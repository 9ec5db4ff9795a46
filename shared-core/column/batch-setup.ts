import type { BatchEvent } from './batch-event.ts';
import type { Rig } from './rig.ts';

/** Light volatiles of a ferment, as mass concentration in the charge [mg/L], 0 … 5000 each. */
export interface LightVolatiles {
  readonly acetaldehydeMgPerL: number;
  readonly methanolMgPerL: number;
  readonly ethylAcetateMgPerL: number;
}

/** The liquid put into the pot. */
export interface Charge {
  /** Volume at 20 °C [mL], 10 … 20 000. */
  readonly volumeMl: number;
  /** Strength at 20 °C [% vol], 0 … 95. */
  readonly strengthAbv: number;
  /** Temperature when heating begins [°C]; the room's when left out. */
  readonly temperatureC?: number;
  readonly lightVolatiles?: LightVolatiles;
}

/** Air pressure at one moment; between moments it changes in a straight line. */
export interface PressurePoint {
  readonly timeS: number;
  /** [kPa], 50 … 110. */
  readonly pressureKPa: number;
}

/** Everything that decides the course of a simulated run; the same setup gives the same run. */
export interface BatchSetup {
  readonly charge: Charge;
  readonly rig: Rig;
  /** Constant air pressure [kPa], 50 … 110, or its course. */
  readonly pressureKPa: number | readonly PressurePoint[];
  /** [°C], 5 … 40; 20 when left out. */
  readonly roomTemperatureC?: number;
  /** What people do, in order of time. Left out: heat on at the rig's setting from the start. */
  readonly schedule?: readonly BatchEvent[];
  /** Integration step [s], 0.02 … 2; 0.5 when left out. */
  readonly stepS?: number;
  /** Strength that divides the distillate into volume above and below [% vol], 1 … 95; 80 when left out. */
  readonly leastStrengthAbv?: number;
}
