import { assertNever } from '../result/index.ts';
import { worded } from '../wording/index.ts';
import { explainRejection } from './explain-rejection.ts';
import { createLineReader, type LineReaderOptions } from './line-reader.ts';
import { compilePattern, type PatternProblem } from './own-pattern.ts';
import type { ChannelValue } from './to-channel-value.ts';

/** What a pattern makes of lines that were heard, for people to look at while they write it. */
export interface PatternPreview {
  /** What is wrong with the pattern itself, in words; null when it can be used. */
  readonly problem: string | null;
  readonly lines: readonly {
    readonly text: string;
    readonly values: readonly ChannelValue[];
    /** Why the line gave nothing; null when it gave values. */
    readonly because: string | null;
  }[];
}

/**
 * Holds a pattern against lines that were heard.
 *
 * @example
 * previewPattern('T {head} C', ['T 78.42 C'], { unit: '°C', decimalComma: false }).lines[0].values[0].value // => 78.42
 * previewPattern('T {he', [], { unit: '°C', decimalComma: false }).problem // => "The brace at position 3 is not closed."
 */
export function previewPattern(
  pattern: string,
  heard: readonly string[],
  options: Pick<LineReaderOptions, 'unit' | 'decimalComma'>,
): PatternPreview {
  const compiled = compilePattern(pattern);
  if (!compiled.ok) return { problem: explainPatternProblem(compiled.error), lines: [] };
  const reader = createLineReader({ ...options, language: 'own-pattern', pattern });
  const lines = heard.map((text) => {
    const { values, rejections } = reader.read(text);
    const [first] = rejections;
    const because = first === undefined || values.length > 0 ? null : explainRejection(first);
    return { text, values, because };
  });
  return { problem: null, lines };
}

function explainPatternProblem(problem: PatternProblem): string {
  switch (problem.kind) {
    case 'no-channel':
      return worded('Put the channel in braces where its number stands, such as {example}.', {
        example: '{head}',
      });
    case 'brace-not-closed':
      return worded('The brace at position {position} is not closed.', {
        position: problem.position + 1,
      });
    case 'channel-name':
      return worded(
        '{place} is no channel: use small letters, digits and hyphens, such as {example} or {other}.',
        { place: `{${problem.name}}`, example: '{head}', other: '{head F}' },
      );
    case 'channel-twice':
      return worded('{place} stands there twice.', { place: `{${problem.name}}` });
    case 'too-many-channels':
      return worded('That is more channels than one line can hold.');
    case 'nothing-between':
      return worded('Two {place} in a row: one is enough.', { place: '{anything}' });
    default:
      return assertNever(problem);
  }
}
