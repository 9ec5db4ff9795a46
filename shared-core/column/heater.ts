/** The heater: follows its setting with a delay, and heats only while it stands under the flask. */
export interface Heater {
  setW: number;
  /** Heat it gives off at this moment [W]. */
  givesW: number;
  removed: boolean;
}

/** Heat into the flask during one step [W]. */
export function stepHeater(heater: Heater, followedShare: number): number {
  heater.givesW += (heater.setW - heater.givesW) * followedShare;
  return heater.removed ? 0 : heater.givesW;
}
