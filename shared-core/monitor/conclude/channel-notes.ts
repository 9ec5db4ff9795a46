import { clockWords, worded } from '../../wording/index.ts';
import type { ConclusionLog } from '../conclusion-log.ts';
import type { ChannelTurn } from '../sense/channel-senses.ts';
import type { PressureDifference } from '../sense/pressure-watch.ts';

/** Puts into the run's log what is wrong with channels beside the head, and that it no longer is. */
export interface ChannelNotes {
  noteTurn(turn: ChannelTurn, timeS: number): void;
  notePressure(difference: PressureDifference | null, timeS: number): void;
}

export function createChannelNotes(log: ConclusionLog): ChannelNotes {
  const silent = new Map<string, number>();
  let pressure: PressureDifference | null = null;
  let pressureProblem = 0;
  return {
    noteTurn: ({ channel, isSilent, lastS }, timeS) => {
      const open = silent.get(channel);
      if (isSilent) {
        const words = worded(
          'The channel {channel} has sent nothing since {last}; what hangs on it is left out. Check its probe and cable.',
          { channel, last: clockWords(lastS) },
        );
        silent.set(channel, log.openProblem(words, lastS));
      } else if (open !== undefined) log.closeProblem(open, timeS);
    },
    notePressure: (difference, timeS) => {
      if (difference === pressure) return;
      if (pressure !== null) log.closeProblem(pressureProblem, timeS);
      pressure = difference;
      if (difference === null) return;
      const { shownKPa, reckonedKPa, sinceS } = difference;
      const words = worded(
        'The air-pressure channel shows {shown} kPa, and the limit is reckoned by {reckoned} kPa. Read a barometer in this room and enter what it shows.',
        { shown: shownKPa.toFixed(1), reckoned: reckonedKPa.toFixed(1) },
      );
      pressureProblem = log.openProblem(words, sinceS);
    },
  };
}
