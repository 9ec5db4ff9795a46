import { even } from '../certainty.ts';
import type { HeadNoise } from '../sense/head-noise.ts';
import { createFirstRest } from './first-rest.ts';
import { createHeldLevel } from './held-level.ts';
import { createLowestLevel } from './lowest-level.ts';
import { createVapourArrival } from './vapour-arrival.ts';
import type { HeadState } from './vapour-filter.ts';
import { createVapourPresence, type Presence } from './vapour-presence.ts';

/** What the head has done so far and does now, as far as its own temperature tells. */
export interface Situation extends Presence {
  readonly arrivedS: number | null;
  readonly bathedS: number | null;
  /** When the head first came to rest; the convention for the first fraction counts from here. */
  readonly heldS: number | null;
  /** Level the head is held at, on the probe's scale [°C]. */
  readonly levelC: number | null;
  /** The lowest level the vapour held for a while, and the same without its first minutes. */
  readonly lowestLevelC: number | null;
  readonly lowestLaterC: number | null;
  /** Seconds with vapour at the bulb since it first came, and since the head first held. */
  readonly wetS: number;
  readonly heldWetS: number;
  /** Seconds of undisturbed, bathed bulb since the last upset. */
  readonly calmS: number;
  /** When the test for a departure had fired and the head was clearly above its level; null once the head has gone back or receded. */
  readonly departedS: number | null;
}

/** One second of the head, with the azeotrope on the probe's own scale. */
export interface SituationSecond {
  readonly timeS: number;
  readonly observedC: number | null;
  readonly head: HeadState;
  readonly noise: HeadNoise;
  readonly azeotropeC: number;
  /** The same by what was stated, whatever the run has shown of the offset. */
  readonly statedAzeotropeC: number;
  readonly isFaulty: boolean;
  /** True where the heat is off, as far as anybody has said and the head does not belie. */
  readonly isHeatOff: boolean;
}

export interface SituationWatch {
  second(input: SituationSecond): void;
  now(): Situation;
}

export function createSituationWatch(): SituationWatch {
  const level = createHeldLevel();
  const lowest = createLowestLevel();
  const arrival = createVapourArrival();
  const presence = createVapourPresence();
  const rest = createFirstRest();
  let heldS: number | null = null;
  /** What was believed of vapour at the last reading: between two of a slow logger only what time allows is known. */
  let wet = 0;
  let undisturbedSinceS = 0;
  let wetS = 0;
  let wetAtHoldS = 0;
  let nowS = 0;

  const upset = (timeS: number): void => {
    level.interrupt();
    undisturbedSinceS = timeS;
  };

  const settle = ({ timeS, head }: SituationSecond): void => {
    const restedForS = rest.see(head.rateKPerS, wet, wetS);
    if (restedForS === null) return;
    heldS = timeS - restedForS;
    wetAtHoldS = wetS - restedForS;
    level.begin(head.vapourC);
    upset(timeS);
  };

  return {
    second: (input) => {
      const { timeS, observedC, head, noise, isHeatOff } = input;
      nowS = timeS;
      if (input.isFaulty) {
        undisturbedSinceS = timeS;
        return;
      }
      if (observedC !== null) wet = head.wet;
      // Before the head has first come to rest in vapour any rest may be its level; afterwards no bulb that cools by the hour is.
      if (heldS === null || wet > even) lowest.see(head, input.statedAzeotropeC);
      if (arrival.bathedS() === null) {
        if (observedC !== null) arrival.see(timeS, head, wet, input.azeotropeC);
        if (arrival.bathedS() === null) return;
        presence.begin(timeS);
        wetS = arrival.wetBeforeS();
        undisturbedSinceS = timeS;
      }
      if (observedC !== null) {
        const turn = presence.see({ timeS, head, noise, isHeatOff });
        if (turn !== 'as-before') upset(timeS);
      }
      if (presence.at(timeS).recededSinceS !== null) {
        undisturbedSinceS = timeS;
        return;
      }
      wetS += 1;
      if (heldS === null) settle(input);
      if (observedC !== null) level.see(timeS, observedC, noise);
    },
    // Each by its name: spread into a new object every second, they cost a quarter of all that the monitor does in a long table.
    now: () => {
      const { recededSinceS, absentS, leftAloneS, longestBreakS } = presence.at(nowS);
      return {
        recededSinceS,
        absentS,
        leftAloneS,
        longestBreakS,
        arrivedS: arrival.arrivedS(),
        bathedS: arrival.bathedS(),
        heldS,
        levelC: level.levelC(),
        lowestLevelC: lowest.lowestC(),
        lowestLaterC: lowest.lowestLaterC(),
        wetS,
        heldWetS: heldS === null ? 0 : wetS - wetAtHoldS,
        calmS: arrival.bathedS() === null ? 0 : nowS - undisturbedSinceS,
        departedS: level.departedS(),
      };
    },
  };
}
