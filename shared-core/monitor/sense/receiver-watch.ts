/** What a balance under the receiver, or a level in it, says of the distillate. */
export interface ReceiverWatch {
  /**
   * Takes one second's reading.
   * @param mlPerUnit volume of distillate that one unit of the reading is worth
   * @param collecting true from when vapour reaches the head: what stands there before is the empty receiver
   */
  see(timeS: number, value: number, mlPerUnit: number, collecting: boolean): void;
  /** Distillate in all receivers so far [mL]; null without a reading of the empty receiver. */
  collectedMl(): number | null;
  /** True while nothing has come for minutes although vapour is there. */
  isStill(): boolean;
}

/** Distillate comes by tenths of a millilitre a second at most: a jump is a hand, a new receiver or a knock. */
const jumpUnits = 2;
/** After a jump the reading must stand for so long before it counts again [s]. */
const standS = 5;
/** A dozen drops: fewer in three minutes are no fraction coming over [mL or g], [s]; chosen here. */
const stillUnits = 0.3;
const stillForS = 180;

export function createReceiverWatch(): ReceiverWatch {
  let zero: number | null = null;
  let earlierMl = 0;
  let presentMl = 0;
  let last: { readonly timeS: number; readonly value: number } | null = null;
  let unsettledSinceS: number | null = null;
  let standing = { value: 0, sinceS: Number.POSITIVE_INFINITY };

  return {
    see: (timeS, value, mlPerUnit, collecting) => {
      const jumped = last !== null && Math.abs(value - last.value) > jumpUnits;
      last = { timeS, value };
      if (jumped) unsettledSinceS = timeS;
      if (unsettledSinceS !== null) {
        if (timeS - unsettledSinceS < standS) return;
        unsettledSinceS = null;
        // What was collected stays collected; the receiver counts on from what stands there now.
        earlierMl += presentMl;
        presentMl = 0;
        zero = value;
      }
      if (!collecting) {
        zero = value;
        standing = { value, sinceS: timeS };
        return;
      }
      if (zero === null) return;
      presentMl = (value - zero) * mlPerUnit;
      if (Math.abs(value - standing.value) > stillUnits) standing = { value, sinceS: timeS };
    },
    collectedMl: () => (zero === null ? null : Math.max(0, earlierMl + presentMl)),
    isStill: () => last !== null && last.timeS - standing.sinceS >= stillForS,
  };
}
