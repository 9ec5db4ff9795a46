import { type MarksLedger, strongDistillateGPerMl } from '../marks-ledger.ts';
import type { ChannelSenses } from '../sense/channel-senses.ts';
import { createReceiverWatch } from '../sense/receiver-watch.ts';
import type { Situation } from '../situation/situation.ts';

/** What has been collected, by the balance where there is one, else by the person's marks. */
export interface ReceiverFollower {
  second(timeS: number, channels: ChannelSenses, situation: Situation): void;
  /** By a balance or level channel [mL]; null without one that speaks. */
  weighedMl(): number | null;
  /** By whatever there is [mL]. */
  collectedMl(): number | null;
  /** All that rises runs back: the pot keeps what it has. */
  isNothingCollected(situation: Situation): boolean;
  /** The same by the person's marks alone. */
  isNothingBooked(situation: Situation): boolean;
}

export function createReceiverFollower(marks: MarksLedger): ReceiverFollower {
  const watch = createReceiverWatch();
  let isSilent = true;
  const weighedMl = (): number | null => (isSilent ? null : watch.collectedMl());
  const mayCollect = ({ heldS }: Situation): boolean => heldS !== null && marks.heat() !== 'off';
  const isNothingBooked = (situation: Situation): boolean =>
    mayCollect(situation) && marks.isReceiverStill();
  return {
    second: (timeS, channels, { arrivedS }) => {
      const shown = channels.latest('receiver');
      isSilent = shown === null;
      if (shown === null || shown.atS !== timeS) return;
      const mlPerUnit = shown.unit === 'g' ? 1 / strongDistillateGPerMl : 1;
      watch.see(timeS, shown.value, mlPerUnit, arrivedS !== null);
    },
    weighedMl,
    collectedMl: () => marks.collectedMl() ?? weighedMl(),
    // A balance knows better than the last reading of a person, who may not have looked since.
    isNothingCollected: (situation) =>
      weighedMl() === null ? isNothingBooked(situation) : mayCollect(situation) && watch.isStill(),
    isNothingBooked,
  };
}
