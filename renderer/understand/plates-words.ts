import { type Estimate, type plateDiagram, say } from '#shared-core';
import type { useWords } from '../words/index.ts';

type PlateDiagram = NonNullable<ReturnType<typeof plateDiagram>>;

type Words = ReturnType<typeof useWords>;

/** Theoretical plates as a range of whole numbers: `about 5`, `4–6`, `at least 7`; null when none would do. */
export function stageWords({ value, low, high }: PlateDiagram['stages']): string | null {
  const least = low ?? value;
  if (least === null) return null;
  if (high === null) return say('at least {count}', { count: whole(least) });
  return whole(least) === whole(high)
    ? say('about {count}', { count: whole(least) })
    : `${whole(least)}–${whole(high)}`;
}

const whole = (count: number) => Math.max(1, Math.round(count));

function isOne({ value, low, high }: PlateDiagram['stages']): boolean {
  const least = low ?? value;
  return least !== null && high !== null && whole(least) === 1 && whole(high) === 1;
}

/** What a class sees in the stepping diagram, in one sentence. */
export function platesSentence(diagram: PlateDiagram, reflux: Estimate, words: Words): string {
  const start = refluxWords(reflux, words);
  const stages = stageWords(diagram.stages);
  if (stages !== null) {
    return isOne(diagram.stages)
      ? say(
          '{start}, about 1 theoretical plate, the pot itself, leads from the pot to this head.',
          { start },
        )
      : say(
          '{start}, {stages} theoretical plates, the pot counted, lead from the pot to this head.',
          { start, stages },
        );
  }
  if (diagram.minimumReflux === null) {
    return say('{start}, the steps shrink to nothing: no number of plates passes the azeotrope.', {
      start,
    });
  }
  const least = words.number(diagram.minimumReflux, 1);
  return reflux.low < reflux.high
    ? say(
        '{start}, as estimated, a steady column could not make this head: it needs more than {least} times. Either the estimate is low, or the column is still giving up the rich liquid it holds.',
        { start, least },
      )
    : say(
        '{start}, no number of plates would make this head in a steady column: it takes more than {least} times.',
        { start, least },
      );
}

/** Reflux as a class says it: how many times as much goes back as comes over. */
function refluxWords({ value, low, high }: Estimate, words: Words): string {
  if (!Number.isFinite(value)) return say('With all liquid going back and nothing taken');
  const ratio = (of: number) => words.number(of, of < 10 ? 1 : 0);
  const range = ratio(low) === ratio(high) ? ratio(value) : `${ratio(low)}–${ratio(high)}`;
  return say('With {range} times as much liquid going back as comes over', { range });
}
