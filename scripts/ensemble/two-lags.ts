/** A bulb that follows vapour with one time constant, and a share of what is read that follows the bulb with another [s]. */
export interface TwoLags {
  readonly fastS: number;
  readonly slowShare: number;
  readonly slowS: number;
}

/** Time until the reading has made so much of a step [s]; the share below 1. */
export function timeToShareS(lags: TwoLags, share: number): number {
  let low = 0;
  let high = 50 * (lags.fastS + lags.slowS);
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (responseAt(lags, middle) < share) low = middle;
    else high = middle;
  }
  return low;
}

/** Two first-order lags one after the other for the slow share, the first alone for the rest. */
function responseAt({ fastS, slowShare, slowS }: TwoLags, timeS: number): number {
  const fastLeft = Math.exp(-timeS / fastS);
  const bothLeft = (slowS * Math.exp(-timeS / slowS) - fastS * fastLeft) / (slowS - fastS);
  return 1 - (1 - slowShare) * fastLeft - slowShare * bothLeft;
}
