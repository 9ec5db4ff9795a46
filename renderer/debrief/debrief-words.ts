import { assertNever } from '#shared-core';
import { clockWords, type Decimal, durationWords, rangeWords } from '../words/index.ts';
import type { AfterLimit, Reaction } from './debrief-of.ts';

export function reactionWords(reaction: Reaction): string {
  switch (reaction.kind) {
    case 'answered':
      return `${durationWords(reaction.reactionS)} after the prompt at ${clockWords(reaction.raisedS)}`;
    case 'before-prompt':
      return 'before any prompt asked for it';
    case 'not-marked':
      return `not marked; asked for at ${clockWords(reaction.raisedS)}`;
    case 'no-prompt':
      return 'neither asked for nor marked';
    default:
      return assertNever(reaction);
  }
}

export function afterLimitWords(after: AfterLimit, decimal: Decimal): string {
  switch (after.kind) {
    case 'not-reached':
      return 'the limit was not reached';
    case 'none':
      return 'nothing: the heat was off before';
    case 'some': {
      const over = durationWords(after.overS);
      return after.volumeMl === null
        ? `${over} long; how much is told once that receiver’s volume is booked`
        : `${rangeWords(after.volumeMl, 1, 'mL', decimal)}, in ${over} at that receiver’s mean rate`;
    }
    default:
      return assertNever(after);
  }
}
