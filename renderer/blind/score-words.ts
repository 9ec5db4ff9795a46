import { durationWords } from '../words/index.ts';
import type { GuessScore } from './score-guess.ts';

/** This near, a guess cannot be told from the record by eye [s]. */
const sameS = 15;

/** What a guess was like, said kindly: what the group saw, and what it would have meant at the bench. */
export function scoreWords(score: GuessScore, reactionTimeS: number): string {
  const { differenceS, guess } = score;
  const size = durationWords(Math.abs(differenceS));
  if (Math.abs(differenceS) <= sameS)
    return 'As good as the record: nobody could do better by eye.';
  if (guess.kind === 'plateau-starts') {
    return differenceS < 0
      ? `${size} before the record: you saw the vapour coming.`
      : `${size} after the record: you waited until the head held, which is careful.`;
  }
  if (differenceS < 0) {
    return differenceS >= -2 * reactionTimeS
      ? `${size} before the record: strong to the end, with next to nothing left behind.`
      : `${size} before the record: strong to the end, with some good distillate left in the pot.`;
  }
  return differenceS <= reactionTimeS
    ? `${size} after the record: within the reaction time, little harm done.`
    : `${size} after the record: more came over, and the last of it was weaker.`;
}
