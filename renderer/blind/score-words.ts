import { say } from '#shared-core';
import { durationWords } from '../words/index.ts';
import type { GuessScore } from './score-guess.ts';

/** This near, a guess cannot be told from the record by eye [s]. */
const sameS = 15;

/** What a guess was like, said kindly: what the group saw, and what it would have meant at the bench. */
export function scoreWords(score: GuessScore, reactionTimeS: number): string {
  const { differenceS, guess } = score;
  if (score.isAfterHeatOff)
    return say('The heat was off by then: there was nothing left to decide.');
  const size = durationWords(Math.abs(differenceS));
  if (Math.abs(differenceS) <= sameS)
    return say('As good as the record: nobody could do better by eye.');
  if (guess.kind === 'plateau-starts') {
    return differenceS < 0
      ? say('{size} before the record: you saw the vapour coming.', { size })
      : say('{size} after the record: you waited until the head held, which is careful.', { size });
  }
  if (differenceS < 0) {
    return differenceS >= -2 * reactionTimeS
      ? say(
          '{size} before the record: strong to the last drop, with next to nothing left behind.',
          { size },
        )
      : say('{size} before the record: strong, with some good distillate left in the pot.', {
          size,
        });
  }
  return differenceS <= reactionTimeS
    ? say('{size} after the record: within the reaction time, little harm done.', { size })
    : say('{size} after the record: more came over, and the last of it was weaker.', { size });
}
