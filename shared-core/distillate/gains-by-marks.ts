import { type RunInput, standingMarks } from '../run/index.ts';
import { gramsPerMl, type VolumeGain, type WhileItCame } from './volume-gain.ts';

/** How much a receiver held, as it was measured. */
type Held =
  | { readonly by: 'volume'; readonly volumeMl: { readonly value: number } }
  | { readonly by: 'mass'; readonly massG: { readonly value: number } };

/** A receiver: when it was taken away, and what was measured of it last of all, at the still or later; null where nothing was. */
export interface MeasuredReceiver {
  readonly toS: number;
  readonly amount: Held | null;
}

interface HeldAt {
  readonly timeS: number;
  readonly held: Held;
}

/** As long as it takes to read a receiver and put another in its place [s]; chosen here. */
const byHandS = 60;

/**
 * What each receiver gained by what was written down of it, one after the other. A measurement stands above those before it: what was
 * read higher than the last of them was misread. One that no mark at the still made is of all that the receiver held when it was taken away.
 *
 * What was read after the heat was off belongs to that moment: the last drops take no vapour with them. What was read just before the receiver
 * was taken away is all that it held, as in the books.
 */
export function gainsByMarks(
  inputs: readonly RunInput[],
  receivers: readonly MeasuredReceiver[],
  came: WhileItCame,
): readonly VolumeGain[] {
  const { arrivedS, untilS } = came;
  const reads = heldByMarks(inputs);
  const gains: VolumeGain[] = [];
  let takenS = Number.NEGATIVE_INFINITY;
  // What stood in a receiver before vapour was told of came over all the same.
  let earlierMl = 0;
  for (const { toS, amount } of receivers) {
    const underS = takenS;
    const atStill = reads.filter(({ timeS }) => timeS > underS && timeS <= toS);
    let at = Math.max(arrivedS, Math.min(underS, untilS));
    let heldMl = 0;
    for (const { timeS, volumeMl } of rising(withLater(atStill, amount, toS), at, came)) {
      const gainedMl = volumeMl - heldMl;
      heldMl = volumeMl;
      const readS = Math.min(toS - timeS <= byHandS ? toS : timeS, untilS);
      const last = gains.at(-1);
      if (readS > at) {
        gains.push({ fromS: at, toS: readS, gainedMl: earlierMl + gainedMl });
        [at, earlierMl] = [readS, 0];
      } else if (last === undefined) earlierMl += gainedMl;
      else if (last.gainedMl !== null) {
        gains[gains.length - 1] = { ...last, gainedMl: last.gainedMl + gainedMl };
      }
    }
    const endS = Math.min(toS, untilS);
    if (endS > at) gains.push({ fromS: at, toS: endS, gainedMl: null });
    takenS = Math.max(underS, toS);
  }
  return gains;
}

function heldByMarks(inputs: readonly RunInput[]): readonly HeldAt[] {
  return standingMarks(inputs).flatMap(({ timeS, mark }): HeldAt[] => {
    if (mark.type === 'mass-read') {
      return [{ timeS, held: { by: 'mass', massG: { value: mark.massG } } }];
    }
    // A volume given as the receiver was taken away is its amount.
    if (mark.type !== 'volume-read') return [];
    return [{ timeS, held: { by: 'volume', volumeMl: { value: mark.volumeMl } } }];
  });
}

function withLater(reads: readonly HeldAt[], amount: Held | null, toS: number): readonly HeldAt[] {
  const last = reads.at(-1)?.held;
  const isLater = amount !== null && (last?.by !== amount.by || figure(last) !== figure(amount));
  return isLater ? [...reads, { timeS: toS, held: amount }] : reads;
}

const figure = (held: Held) => (held.by === 'mass' ? held.massG : held.volumeMl).value;

/** As volumes [mL] that never fall, and none above the last of them. */
function rising(
  reads: readonly HeldAt[],
  underS: number,
  came: WhileItCame,
): readonly { readonly timeS: number; readonly volumeMl: number }[] {
  let weighed: Weighed = { timeS: underS, massG: 0, volumeMl: 0, strengthAbv: 0 };
  const volumes = reads.map(({ timeS, held }) => {
    if (held.by === 'volume') return { timeS, volumeMl: held.volumeMl.value };
    weighed = weighedNext(weighed, { timeS, massG: held.massG.value }, came);
    return { timeS, volumeMl: weighed.volumeMl };
  });
  const lastMl = volumes.at(-1)?.volumeMl ?? 0;
  let highestMl = 0;
  return volumes.filter(({ volumeMl }) => {
    const isRising = volumeMl >= highestMl && volumeMl <= lastMl;
    if (isRising) highestMl = volumeMl;
    return isRising;
  });
}

interface Weighed {
  readonly timeS: number;
  readonly massG: number;
  readonly volumeMl: number;
  /** Mean over all that the receiver holds [% vol]. */
  readonly strengthAbv: number;
}

/** A weighed receiver holds its mass by the density of all that is in it, as in the books: what came before, and what came since at its own mean strength. */
function weighedNext(
  before: Weighed,
  { timeS, massG }: Pick<Weighed, 'timeS' | 'massG'>,
  { untilS, meanStrengthAbv }: WhileItCame,
): Weighed {
  const sinceAbv = meanStrengthAbv(before.timeS, Math.min(timeS, untilS));
  const sinceMl = Math.max(0, (massG - before.massG) / gramsPerMl(sinceAbv));
  const wholeMl = before.volumeMl + sinceMl;
  const strengthAbv =
    wholeMl > 0 ? (before.volumeMl * before.strengthAbv + sinceMl * sinceAbv) / wholeMl : sinceAbv;
  return { timeS, massG, strengthAbv, volumeMl: massG / gramsPerMl(strengthAbv) };
}
