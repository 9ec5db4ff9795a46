import { even } from '../certainty.ts';
import { confirmedAfterS } from '../patience.ts';
import type { HeadNoise } from '../sense/head-noise.ts';
import type { HeadState } from './vapour-filter.ts';

/** One second of a bulb that vapour has bathed. */
export interface PresenceSecond {
  readonly timeS: number;
  readonly head: HeadState;
  readonly noise: HeadNoise;
  /** True where the heat is off, as far as anybody has said and the head does not belie. */
  readonly isHeatOff: boolean;
}

/** How vapour and bulb have stood to each other. */
export interface Presence {
  /** Since when no vapour has bathed the bulb; null while it does. */
  readonly recededSinceS: number | null;
  /** How long no vapour has come [s]. */
  readonly absentS: number;
  /** And for how long nothing has warmed the bulb either: what is heated warms it, though the vapour stay below [s]. */
  readonly leftAloneS: number;
  /** The longest time that it was so left alone and vapour came back all the same [s]. */
  readonly longestBreakS: number;
}

/** Follows whether vapour bathes the bulb, after it first has. */
export interface VapourPresence {
  /** The bulb is bathed for the first time. */
  begin(timeS: number): void;
  /** Takes a second in which a reading came; whether vapour has come or gone with it. */
  see(second: PresenceSecond): 'come' | 'gone' | 'as-before';
  /** `absentS` and `leftAloneS` count up to `timeS`. */
  at(timeS: number): Presence;
}

/** Vapour has gone where it is less likely there than this, and come where more than the other: a bulb in doubt stays what it was. */
const goes = 0.3;
const comes = 1 - goes;
/** A bulb that has hardly cooled is not said to have lost its vapour [K], [noise]. */
const leastFallK = 0.5;
const fallSds = 4;
/** Warm glass and rising air warm a bulb that has cooled by less than this [K]. */
const warmedK = 2;

export function createVapourPresence(): VapourPresence {
  let recededSinceS: number | null = null;
  let lastWetS = 0;
  let lastWarmedS = 0;
  let longestBreakS = 0;
  /** The coolest it has been since it was last in vapour or warmed [°C]. */
  let troughC = Number.POSITIVE_INFINITY;
  /** The coolest it has been since its vapour went [°C]. */
  let coolestC = Number.POSITIVE_INFINITY;
  let otherReads = 0;
  let otherForS = 0;
  let readS = 0;

  const followWarmth = ({ timeS, head }: PresenceSecond, noiseK: number): void => {
    troughC = Math.min(troughC, head.bulbC);
    if (head.wet <= even && head.bulbC <= troughC + Math.max(warmedK, noiseK)) return;
    if (recededSinceS !== null) longestBreakS = Math.max(longestBreakS, timeS - lastWarmedS);
    lastWarmedS = timeS;
    troughC = head.bulbC;
  };

  const isGone = ({ head }: PresenceSecond, leastK: number): boolean =>
    head.wet < goes && head.bulbC < head.vapourC - leastK;

  /** A bulb that cools could be bathed by vapour that cools with it, and the filter holds that open; with the heat off none comes. */
  const isBack = ({ head, isHeatOff }: PresenceSecond, leastK: number): boolean =>
    head.wet > comes && (!isHeatOff || head.bulbC > coolestC + leastK / 2);

  const seeOther = (second: PresenceSecond, noiseK: number): void => {
    const { timeS, head } = second;
    const leastK = Math.max(leastFallK, noiseK);
    coolestC = recededSinceS === null ? head.bulbC : Math.min(coolestC, head.bulbC);
    const isOther = recededSinceS === null ? isGone(second, leastK) : isBack(second, leastK);
    otherReads = isOther ? otherReads + 1 : 0;
    otherForS = isOther ? otherForS + timeS - readS : 0;
    readS = timeS;
  };

  /**
   * A bulb that has fallen so far has been cooling since the reading before. One that was dry may read anything once: three readings
   * have to say that vapour is back, however far apart they are.
   */
  const isOther = (): boolean =>
    (recededSinceS === null ? otherForS : otherReads) >= confirmedAfterS;

  return {
    begin: (timeS) => {
      lastWetS = timeS;
      lastWarmedS = timeS;
    },
    see: (second) => {
      const { timeS, head, noise } = second;
      const noiseK = fallSds * Math.hypot(noise.whiteSdK, noise.slowSdK);
      if (head.wet > even) lastWetS = timeS;
      followWarmth(second, noiseK);
      seeOther(second, noiseK);
      if (!isOther()) return 'as-before';
      otherReads = 0;
      otherForS = 0;
      recededSinceS = recededSinceS === null ? Math.max(lastWetS, timeS - confirmedAfterS) : null;
      return recededSinceS === null ? 'come' : 'gone';
    },
    at: (timeS) => ({
      recededSinceS,
      absentS: recededSinceS === null ? 0 : timeS - lastWetS,
      leftAloneS: recededSinceS === null ? 0 : timeS - lastWarmedS,
      longestBreakS,
    }),
  };
}
