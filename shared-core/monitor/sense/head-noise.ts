/** The noise of a head probe: white, and correlated over some seconds. */
export interface HeadNoise {
  readonly whiteSdK: number;
  readonly slowSdK: number;
  readonly slowCorrelationS: number;
}
