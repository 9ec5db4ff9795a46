import type { ChannelProblem } from '../../snapshot/index.ts';
import { clockWords, worded } from '../../wording/index.ts';
import type { ConclusionLog } from '../conclusion-log.ts';
import type { ChannelTurn } from '../sense/channel-senses.ts';
import type { PressureDifference } from '../sense/pressure-watch.ts';

/** Puts into the run's log what is wrong with channels beside the head, and that it no longer is. */
export interface ChannelNotes {
  noteTurn(turn: ChannelTurn, timeS: number): void;
  notePressure(difference: PressureDifference | null, timeS: number): void;
  noteOtherProbe(sinceS: number | null): void;
  /** What is wrong now; the same array until that changes. */
  open(): readonly ChannelProblem[];
}

/** Under this name stands what a barometer contradicts; a channel's own silence stands under the channel's. */
const contradiction = ' contradiction';
const otherProbe = ' other probe';

export function createChannelNotes(log: ConclusionLog): ChannelNotes {
  const numbers = new Map<string, number>();
  const problems = new Map<string, ChannelProblem>();
  let open: readonly ChannelProblem[] = [];
  let pressure: PressureDifference | null = null;
  let otherSinceS: number | null = null;

  const begin = (name: string, problem: string, fromS: number): void => {
    numbers.set(name, log.openProblem(problem, fromS));
    problems.set(name, { problem, fromS });
    open = [...problems.values()];
  };

  const end = (name: string, timeS: number): void => {
    const number = numbers.get(name);
    if (number === undefined || !problems.delete(name)) return;
    log.closeProblem(number, timeS);
    open = [...problems.values()];
  };

  return {
    noteTurn: ({ channel, isSilent, lastS }, timeS) => {
      end(channel, timeS);
      if (!isSilent) return;
      const words = worded(
        'The channel {channel} has sent nothing since {last}; what hangs on it is left out. Check its probe and cable.',
        { channel, last: clockWords(lastS) },
      );
      begin(channel, words, lastS);
    },
    notePressure: (difference, timeS) => {
      if (difference === pressure) return;
      pressure = difference;
      end(contradiction, timeS);
      if (difference === null) return;
      const { shownKPa, reckonedKPa, sinceS } = difference;
      const words = worded(
        'The air-pressure channel shows {shown} kPa, and the limit is reckoned by {reckoned} kPa. Read a barometer in this room and enter what it shows.',
        { shown: shownKPa.toFixed(1), reckoned: reckonedKPa.toFixed(1) },
      );
      begin(contradiction, words, sinceS);
    },
    noteOtherProbe: (sinceS) => {
      if (sinceS === otherSinceS || sinceS === null) return;
      end(otherProbe, sinceS);
      otherSinceS = sinceS;
      const words = worded(
        'Since {since} another probe is read than the one that the run began with. What that one had shown of itself, and its calibration, say little of this one: strengths are told with more doubt. Look whether it hangs level with the side arm.',
        { since: clockWords(sinceS) },
      );
      begin(otherProbe, words, sinceS);
    },
    open: () => open,
  };
}
