import { fail, type Result, succeed } from '../result/index.ts';
import { channelSchema } from '../run/index.ts';
import { type LineRejection, mostValuesInLine, type RawValue, type WireUnit } from './raw-value.ts';
import { readUnit } from './wire-number.ts';

type PatternPart =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'anything' }
  | { readonly kind: 'number'; readonly channel: string; readonly unit: WireUnit | null };

/** A line as the person described it, ready to be held against what arrives. */
export interface OwnPattern {
  readonly parts: readonly PatternPart[];
}

/** Why a pattern cannot be used. */
export type PatternProblem =
  | { readonly kind: 'no-channel' }
  | { readonly kind: 'brace-not-closed'; readonly position: number }
  | { readonly kind: 'channel-name'; readonly name: string }
  | { readonly kind: 'channel-twice'; readonly name: string }
  | { readonly kind: 'too-many-channels' }
  | { readonly kind: 'nothing-between'; readonly position: number };

/** The word in braces that stands for whatever is of no interest. */
const anythingWord = 'anything';

/**
 * Reads a person's description of a line: the line as it looks, with each number replaced by its
 * channel in braces, `{head}`, or with a unit, `{head F}`. `{anything}` stands for text of no
 * interest. A blank stands for any number of blanks.
 *
 * @example
 * compilePattern('T1 {head} C; {anything} {pot}').value.parts.length // => 5
 * compilePattern('T1 head').error.kind // => "no-channel"
 */
export function compilePattern(text: string): Result<OwnPattern, PatternProblem> {
  const parts: PatternPart[] = [];
  const channels = new Set<string>();
  let position = 0;
  for (const piece of text.split(/(\{[^{}]*\})/)) {
    const braced = /^\{([^{}]*)\}$/.exec(piece)?.[1];
    if (braced === undefined) {
      const stray = piece.search(/[{}]/);
      if (stray >= 0) return fail({ kind: 'brace-not-closed', position: position + stray });
      if (piece.trim() !== '')
        parts.push({ kind: 'text', text: piece.trim().replace(/\s+/g, ' ') });
    } else {
      const part = bracedPart(braced.trim());
      if (part === null) return fail({ kind: 'channel-name', name: braced });
      if (part.kind === 'anything' && parts.at(-1)?.kind === 'anything') {
        return fail({ kind: 'nothing-between', position });
      }
      if (part.kind === 'number') {
        if (channels.has(part.channel)) return fail({ kind: 'channel-twice', name: part.channel });
        channels.add(part.channel);
      }
      parts.push(part);
    }
    position += piece.length;
  }
  if (channels.size === 0) return fail({ kind: 'no-channel' });
  if (channels.size > mostValuesInLine) return fail({ kind: 'too-many-channels' });
  return succeed({ parts });
}

function bracedPart(inside: string): PatternPart | null {
  if (inside === anythingWord) return { kind: 'anything' };
  const [channel = '', ...unitWords] = inside.split(/\s+/);
  const unit = readUnit(unitWords.join(' '));
  if (unit === undefined || !channelSchema.safeParse(channel).success) return null;
  return { kind: 'number', channel, unit };
}

const blanks = /\s*/y;
const pointNumber = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?/y;
const commaNumber = /[+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:[eE][+-]?\d{1,3})?/y;

/**
 * Holds one line against a pattern, from left to right without ever going back, so that no line can
 * take long: `{anything}` ends at the first place where what follows it fits.
 *
 * @example
 * const pattern = compilePattern('{anything} T1 {head} C').value;
 * matchPattern(pattern, '12:30:07  T1  78.42 C', false).value[0].value // => 78.42
 */
export function matchPattern(
  pattern: OwnPattern,
  line: string,
  decimalComma: boolean,
): Result<readonly RawValue[], LineRejection> {
  const number = decimalComma ? commaNumber : pointNumber;
  const text = line.replace(/\s+/g, ' ').trim();
  const refused = fail({ kind: 'not-understood', text: line } as const);
  const values: RawValue[] = [];
  let position = 0;
  let searching = false;
  for (const part of pattern.parts) {
    if (part.kind === 'anything') {
      searching = true;
      continue;
    }
    position += lengthAt(blanks, text, position) ?? 0;
    const found = searching ? searchFrom(part, text, position, number) : position;
    const length = found === null ? null : partLength(part, text, found, number);
    if (found === null || length === null) return refused;
    if (part.kind === 'number') {
      const digits = text.slice(found, found + length).replace(',', '.');
      values.push({ name: part.channel, value: Number(digits), unit: part.unit });
    }
    position = found + length;
    searching = false;
  }
  const finite = values.every(({ value }) => Number.isFinite(value));
  if (!finite || (!searching && position < text.length)) return refused;
  return succeed(values);
}

function searchFrom(
  part: Exclude<PatternPart, { kind: 'anything' }>,
  text: string,
  from: number,
  number: RegExp,
): number | null {
  if (part.kind === 'text') {
    const found = text.indexOf(part.text, from);
    return found < 0 ? null : found;
  }
  for (let position = from; position < text.length; position += 1) {
    if (lengthAt(number, text, position) !== null) return position;
  }
  return null;
}

function partLength(
  part: Exclude<PatternPart, { kind: 'anything' }>,
  text: string,
  position: number,
  number: RegExp,
): number | null {
  if (part.kind === 'number') return lengthAt(number, text, position);
  return text.startsWith(part.text, position) ? part.text.length : null;
}

function lengthAt(expression: RegExp, text: string, position: number): number | null {
  expression.lastIndex = position;
  return expression.exec(text)?.[0].length ?? null;
}
