import type { PlateDiagram, StageCount } from '#shared-core';
import type { useWords } from '../words/use-words.ts';

type Words = ReturnType<typeof useWords>;

/** Theoretical plates as a range of whole numbers: `about 5`, `4–6`, `at least 7`; null when none would do. */
export function stageWords({ value, low, high }: StageCount): string | null {
  const least = low ?? value;
  if (value === null && high === null) return low === null ? null : `at least ${whole(low)}`;
  if (least === null) return null;
  if (high === null) return `at least ${whole(least)}`;
  return whole(least) === whole(high) ? `about ${whole(least)}` : `${whole(least)}–${whole(high)}`;
}

const whole = (count: number) => Math.max(1, Math.round(count));

/** Reflux as a class says it: how many times as much goes back as comes over. */
export function refluxWords(refluxRatio: number, words: Words): string {
  if (!Number.isFinite(refluxRatio)) return 'With everything going back and nothing taken';
  const ratio = words.number(refluxRatio, refluxRatio < 10 ? 1 : 0);
  return `With ${ratio} times as much liquid going back as comes over`;
}

/** What a class sees in the stepping diagram, in one sentence. */
export function platesSentence(diagram: PlateDiagram, refluxRatio: number, words: Words): string {
  const start = refluxWords(refluxRatio, words);
  const stages = stageWords(diagram.stages);
  if (stages !== null) {
    return `${start}, ${stages} theoretical plates, the pot counted, lead from the pot to this head; near the azeotrope each further plate gains almost nothing.`;
  }
  if (diagram.minimumReflux === null) {
    return `${start}, the steps shrink to nothing: no number of plates passes the azeotrope.`;
  }
  return `${start}, no number of plates would reach this head: it takes more than ${words.number(diagram.minimumReflux, 1)} times.`;
}
