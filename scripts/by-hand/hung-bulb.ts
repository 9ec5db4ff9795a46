/** A bulb with two time constants, hung right or wrong. */
export interface BulbSetup {
  readonly lag: TwoLags;
  /** How far it hangs too high (+) or too low (−) [cm]. */
  readonly tooHighCm: number;
  /** Share of the bulb that leaves the vapour per centimetre too high. */
  readonly sharePerCm: number;
  /** How much cooler the dead space above the take-off is at the usual flow [K], and how slowly it follows [s]. */
  readonly deadSpaceK: number;
  readonly deadSpaceS: number;
  /** Share of a splash from below, hotter than the vapour, that a bulb feels per centimetre too low. */
  readonly splashPerCm: number;
  /** Without vapour around it everything goes slower by this factor. */
  readonly drySlowness: number;
}

/** Response to a step: `1 − fastShare exp(−t/fastS) − (1 − fastShare) exp(−t/slowS)`. */
export interface TwoLags {
  readonly fastShare: number;
  readonly fastS: number;
  readonly slowS: number;
}

/** The two parts of a bulb that follow what they feel at their own pace. */
export interface LaggedBulb {
  fastC: number;
  slowC: number;
}

export interface HungBulb {
  readonly setup: BulbSetup;
  readonly core: LaggedBulb;
  /** What it feels, and how much slower it follows for want of vapour. */
  feltC: number;
  slowness: number;
  deadSpaceC: number;
  /** Share of the take-off that is filled with vapour, 0 … 1. */
  bathed: number;
  splash: number;
}

/** What is around the bulb. */
export interface Surroundings {
  /** Vapour past the bulb, as a share of the usual. */
  readonly flow: number;
  readonly vapourC: number;
  readonly wallC: number;
  readonly roomC: number;
  /** How much hotter the column is a little below. */
  readonly belowK: number;
  /** Standard normal. */
  readonly chance: number;
}

/** Least flow, as a share of the usual, that fills the take-off. */
const fillingFlow = 0.12;
const fillS = 3;
const emptyS = 10;
const splashS = 15;
const mostOutside = 0.8;

export function coldBulb(setup: BulbSetup, roomC: number): HungBulb {
  return {
    setup,
    core: { fastC: roomC, slowC: roomC },
    feltC: roomC,
    slowness: setup.drySlowness,
    deadSpaceC: roomC,
    bathed: 0,
    splash: 0,
  };
}

export function bulbTemperature({ fastShare }: TwoLags, { fastC, slowC }: LaggedBulb): number {
  return fastShare * fastC + (1 - fastShare) * slowC;
}

/** Lets a bulb follow what it feels for a while. */
export function follow(
  bulb: LaggedBulb,
  lag: TwoLags,
  feltC: number,
  slowness: number,
  stepS: number,
): void {
  bulb.fastC += (feltC - bulb.fastC) * (1 - Math.exp(-stepS / (lag.fastS * slowness)));
  bulb.slowC += (feltC - bulb.slowC) * (1 - Math.exp(-stepS / (lag.slowS * slowness)));
}

/** Moves the bulb on by one step. */
export function feel(bulb: HungBulb, around: Surroundings, stepS: number): void {
  const { setup } = bulb;
  const filled = Math.min(1, around.flow / fillingFlow);
  bulb.bathed +=
    (filled - bulb.bathed) * Math.min(1, stepS / (filled > bulb.bathed ? fillS : emptyS));
  const staleC = Math.min(around.vapourC, around.wallC);
  const wetC = bulb.bathed * around.vapourC + (1 - bulb.bathed) * staleC;

  // Vapour warms the dead space the more of it passes; the room cools it always.
  const exchange =
    (Math.max(1, around.vapourC - around.roomC - setup.deadSpaceK) / setup.deadSpaceK) *
    around.flow ** 0.7;
  const settlesC = (exchange * around.vapourC + around.roomC) / (exchange + 1);
  bulb.deadSpaceC += (settlesC - bulb.deadSpaceC) * Math.min(1, stepS / setup.deadSpaceS);

  bulb.splash +=
    (-bulb.splash * stepS) / splashS + Math.sqrt((2 * stepS) / splashS) * around.chance;
  const outside = Math.min(mostOutside, Math.max(0, setup.tooHighCm) * setup.sharePerCm);
  const splashed =
    Math.max(0, -setup.tooHighCm) * setup.splashPerCm * Math.max(0, 1 + 0.5 * bulb.splash);
  bulb.feltC =
    (1 - outside) * wetC +
    outside * Math.min(bulb.deadSpaceC, wetC) +
    splashed * around.belowK * Math.min(1.5, around.flow) * bulb.bathed;

  bulb.slowness = 1 + (setup.drySlowness - 1) * (1 - bulb.bathed);
  follow(bulb.core, setup.lag, bulb.feltC, bulb.slowness, stepS);
}

/** Time until the response to a step reaches a share [s]. */
export function responseTime({ fastShare, fastS, slowS }: TwoLags, share: number): number {
  let low = 0;
  let high = 20 * slowS;
  for (let halving = 0; halving < 60; halving += 1) {
    const timeS = (low + high) / 2;
    const left = fastShare * Math.exp(-timeS / fastS) + (1 - fastShare) * Math.exp(-timeS / slowS);
    if (1 - left < share) low = timeS;
    else high = timeS;
  }
  return low;
}

/** Two lags with this t63 and this ratio of t90 to t63 (one lag alone has 2.30). */
export function twoLags(fastShare: number, t63S: number, ratio: number): TwoLags {
  let low = 1;
  let high = 60;
  for (let halving = 0; halving < 50; halving += 1) {
    const slowS = (low + high) / 2;
    const lag = { fastShare, fastS: 1, slowS };
    if (responseTime(lag, 0.9) / responseTime(lag, 1 - Math.exp(-1)) < ratio) low = slowS;
    else high = slowS;
  }
  const unit = { fastShare, fastS: 1, slowS: low };
  const scale = t63S / responseTime(unit, 1 - Math.exp(-1));
  return { fastShare, fastS: scale, slowS: low * scale };
}
