import { distillingAdvice, type FermentVerdict, type KeptFerment, say } from '#shared-core';
import { conditionWords, isWithoutEnd } from './ferment-words.ts';

/** What is to be done with a ferment next, in a sentence. */
export function nextActWords(
  ferment: KeptFerment,
  verdict: Pick<FermentVerdict, 'state' | 'expectedEndGravity'>,
): string {
  const { isGo, unmet } = distillingAdvice(ferment, verdict);
  if (isGo) return say('It may go into the still.');
  if (isWithoutEnd(verdict)) return say('Measure its gravity, or say how much sugar went in.');
  if (verdict.state !== 'finished') {
    return verdict.state === 'stuck'
      ? say('Warm it, stir it up, and read its gravity again tomorrow.')
      : say('Keep it warm, and read its gravity again tomorrow.');
  }
  const [first] = unmet;
  return first === undefined ? say('It may go into the still.') : conditionWords(first);
}
