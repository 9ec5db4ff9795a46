/** The probe's correction as a run's settings hold it, with its doubt where the plateau lies. */
export interface ProbeCorrection {
  readonly offsetK: number;
  readonly gain: number;
  readonly standardUncertaintyK: number;
}
