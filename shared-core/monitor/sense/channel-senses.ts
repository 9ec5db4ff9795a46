import { confirmedAfterS } from '../patience.ts';
import { createReadingPace, type ReadingPace } from './reading-pace.ts';

/** What another channel than the head showed last. */
export interface ChannelValue {
  readonly channel: string;
  readonly value: number;
  readonly unit: string;
  readonly atS: number;
}

/** Channels with their ages: a value that is too old is no value, and that is told. */
export interface ChannelSenses {
  see(reading: ChannelValue): void;
  /** Lets one second pass; tells the channels that went silent or spoke again in it. */
  second(timeS: number): readonly ChannelTurn[];
  /** What a channel shows; null where it shows nothing or nothing recent. */
  value(channel: string): number | null;
  latest(channel: string): ChannelValue | null;
}

/** A channel went silent, or spoke again. */
export interface ChannelTurn {
  readonly channel: string;
  readonly isSilent: boolean;
  /** When it was heard last [s]. */
  readonly lastS: number;
}

/** A channel is silent after so long at least, and after what is ordinary at its own pace, as for the head's probe, but patient [s]. */
const silentAfterS = 15;
/** Nothing that these channels measure changes faster; a value that jumps further waits until it is confirmed [units/s]. */
const fastest = 15;

interface Sense {
  last: ChannelValue;
  readonly pace: ReadingPace;
  isSilent: boolean;
  /** A value that jumped, waiting for others like it. */
  pending: { readonly value: number; readonly sinceS: number } | null;
}

export function createChannelSenses(): ChannelSenses {
  const senses = new Map<string, Sense>();

  const accept = (sense: Sense, reading: ChannelValue): void => {
    sense.pace.see(reading.atS);
    sense.last = reading;
    sense.pending = null;
  };

  const believe = (sense: Sense, reading: ChannelValue): void => {
    const gapS = Math.max(1, reading.atS - sense.last.atS);
    if (!isTemperature(reading) || Math.abs(reading.value - sense.last.value) <= fastest * gapS) {
      accept(sense, reading);
      return;
    }
    const { pending } = sense;
    if (pending === null || Math.abs(pending.value - reading.value) > fastest) {
      sense.pending = { value: reading.value, sinceS: reading.atS };
    } else if (reading.atS - pending.sinceS >= confirmedAfterS) {
      accept(sense, reading);
    }
  };

  const latest = (channel: string): ChannelValue | null => {
    const sense = senses.get(channel);
    return sense === undefined || sense.isSilent ? null : sense.last;
  };

  return {
    latest,
    see: (reading) => {
      const sense = senses.get(reading.channel);
      if (sense === undefined) {
        const pace = createReadingPace();
        pace.see(reading.atS);
        senses.set(reading.channel, { last: reading, pace, isSilent: false, pending: null });
      } else {
        believe(sense, reading);
      }
    },
    second: (timeS) => {
      const turns: ChannelTurn[] = [];
      for (const [channel, sense] of senses) {
        const quietS = timeS - sense.last.atS;
        const isSilent = quietS > Math.max(silentAfterS, sense.pace.patienceS(false));
        if (isSilent !== sense.isSilent) turns.push({ channel, isSilent, lastS: sense.last.atS });
        sense.isSilent = isSilent;
      }
      return turns;
    },
    value: (channel) => latest(channel)?.value ?? null,
  };
}

function isTemperature({ unit }: ChannelValue): boolean {
  return unit === '°C';
}
