import { potSdK } from './instrument-readings.ts';

/** What a probe in the pot shows at a time of boiling since vapour arrived. */
export interface PotReading {
  readonly kind: 'pot';
  readonly boiledS: number;
  /** Height above the azeotrope at the air pressure that was stated [K]. */
  readonly value: number;
  readonly sd: number;
  /** Share of the head's offset that the pot is off by as well, 0 … 1. */
  readonly offsetShare: number;
}

/** What head and pot may be off, as standard deviations. */
export interface OffsetDoubt {
  /** The head: air pressure, bulb, calibration and the model together [K]. */
  readonly offsetSdK: number;
  /** Of it, what the air pressure leaves open, which moves the pot alike [K]. */
  readonly pressureSdK: number;
}

/**
 * What an offset of the head tells of the pot's: the air pressure's part of it, `E[p | b] = (u_p²/u_b²) b`; `u_p √(1 − u_p²/u_b²)` stays open.
 *
 * Source: conditional mean and variance of normal variables of which one is a part of the other.
 */
export function potOffset({ offsetSdK, pressureSdK }: OffsetDoubt): {
  readonly offsetShare: number;
  readonly openSdK: number;
} {
  const offsetShare = Math.min(1, (pressureSdK / offsetSdK) ** 2);
  return { offsetShare, openSdK: pressureSdK * Math.sqrt(1 - offsetShare) };
}

/** What the probe in the pot shows, with what head and pressure leave in doubt of it. */
export function potReading(boiledS: number, heightK: number, doubt: OffsetDoubt): PotReading {
  const { offsetShare, openSdK } = potOffset(doubt);
  return { kind: 'pot', boiledS, value: heightK, sd: Math.hypot(potSdK, openSdK), offsetShare };
}
