import type { Reading, RunInput } from '../run/index.ts';
import { gramsPerMl, type VolumeGain, type WhileItCame } from './volume-gain.ts';

interface KnownGain extends VolumeGain {
  readonly gainedMl: number;
}

/** What a receiver that is measured all along gained, from reading to reading. */
export interface ReceiverGains {
  readonly basis: 'receiver-volume' | 'receiver-mass';
  readonly gains: readonly KnownGain[];
}

/** What falls by more is another receiver, or a hand that let go of it [mL or g]; chosen here. */
const mostFall = 2;
/** Distillate comes by tenths of a millilitre a second at most: what rises faster is a hand, a knock or a full receiver put back [mL/s or g/s]; common practice, no source. */
const fastestPerS = 0.2;

/** Drops fall seconds apart: over less than this a flow is no more even than from the one reading to the other [s]; chosen here. */
const shortestS = 10;

/**
 * A balance or a level under the receiver, read all along. What it held stays counted when another is put in its place; a last digit that
 * flickers counts nothing, because only what stands higher than ever before in this receiver has come over since.
 *
 * A mass becomes a volume by the density of what drips, `V = Σ Δm/ρ(w)`.
 *
 * @returns null without two readings
 */
export function gainsByReceiver(
  inputs: readonly RunInput[],
  { arrivedS, untilS, strengthAt }: WhileItCame,
): ReceiverGains | null {
  const gains: KnownGain[] = [];
  let before: Reading | null = null;
  let highest = 0;
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.channel !== 'receiver' || input.quality !== 'good') {
      continue;
    }
    const [last, { timeS, value, unit }]: readonly [Reading | null, Reading] = [before, input];
    if (last !== null && timeS <= last.timeS) continue;
    before = input;
    const mostRise = mostFall + fastestPerS * (timeS - (last?.timeS ?? timeS));
    const isHandled = last === null || value < highest - mostFall || value - last.value > mostRise;
    const gained = isHandled ? 0 : Math.max(0, value - highest);
    highest = isHandled ? value : Math.max(highest, value);
    if (last === null || timeS <= arrivedS || last.timeS >= untilS) continue;
    const gainedMl = unit === 'g' ? gained / gramsPerMl(strengthAt(timeS)) : gained;
    const [open, toS] = [gains.at(-1), Math.min(timeS, untilS)];
    if (open !== undefined && open.toS - open.fromS < shortestS) {
      gains[gains.length - 1] = { ...open, toS, gainedMl: open.gainedMl + gainedMl };
    } else gains.push({ fromS: Math.max(last.timeS, arrivedS), toS, gainedMl });
  }
  if (before === null || gains.length === 0) return null;
  return { basis: before.unit === 'g' ? 'receiver-mass' : 'receiver-volume', gains };
}
