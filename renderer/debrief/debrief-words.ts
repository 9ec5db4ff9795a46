import { assertNever, say } from '#shared-core';
import { clockWords, type Decimal, durationWords, rangeWords } from '../words/index.ts';
import type { AfterLimit, Reaction } from './debrief-of.ts';

export function reactionWords(reaction: Reaction): string {
  switch (reaction.kind) {
    case 'answered':
      return say('{reaction} after the prompt at {raised}', {
        reaction: durationWords(reaction.reactionS),
        raised: clockWords(reaction.raisedS),
      });
    case 'before-prompt':
      return say('before any prompt asked for it');
    case 'not-marked':
      return say('not marked; asked for at {raised}', { raised: clockWords(reaction.raisedS) });
    case 'no-prompt':
      return say('neither asked for nor marked');
    default:
      return assertNever(reaction);
  }
}

export function afterLimitWords(after: AfterLimit, decimal: Decimal): string {
  switch (after.kind) {
    case 'not-reached':
      return say('the limit was not reached');
    case 'none':
      return say('nothing: the heat was off before');
    case 'some': {
      const over = durationWords(after.overS);
      return after.volumeMl === null
        ? say('{over} long; how much is told once that receiver’s volume is booked', { over })
        : say('{volume}, in {over} at that receiver’s mean rate', {
            volume: rangeWords(after.volumeMl, 1, 'mL', decimal),
            over,
          });
    }
    default:
      return assertNever(after);
  }
}
