/** Time over which slow noise keeps: lab heads and stems show 10–20 s; common practice, no source [s]. */
export const slowCorrelationS = 15;

/** The noise of a head probe: white, and slow, with an exponential memory of {@link slowCorrelationS}. */
export interface HeadNoise {
  readonly whiteSdK: number;
  readonly slowSdK: number;
}
