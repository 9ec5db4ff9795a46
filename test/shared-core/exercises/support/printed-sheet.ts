import type { Drawing, PrintedDocument } from '#shared-core';

/** One question as it stands on paper: nothing else is known to whoever solves it. */
export interface PrintedQuestion {
  readonly title: string;
  readonly text: string;
  readonly figure: Drawing | null;
}

/** A worksheet taken apart into its curve and its questions. */
export function readSheet({ blocks }: PrintedDocument): {
  readonly curve: Drawing | null;
  readonly questions: readonly PrintedQuestion[];
} {
  let curve: Drawing | null = null;
  const questions: { title: string; text: string; figure: Drawing | null }[] = [];
  for (const block of blocks) {
    const open = questions.at(-1);
    if (block.kind === 'question') questions.push({ title: block.title, text: '', figure: null });
    else if (block.kind === 'figure' && open === undefined) curve = block.drawing;
    else if (block.kind === 'figure' && open !== undefined) open.figure = block.drawing;
    else if (block.kind === 'paragraph' && open !== undefined) open.text += `${block.text}\n`;
    else if (block.kind === 'list' && open !== undefined)
      open.text += `${block.items.join('\n')}\n`;
  }
  return { curve, questions };
}

export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

/** The drawn curve in the units of its axes, line by line, read with nothing but the words at the ticks. */
export function readCurve(drawing: Drawing): readonly (readonly CurvePoint[])[] {
  const texts = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
  const upright = texts.filter(({ anchor, text }) => anchor === 'end' && isNumber(text));
  const rows = groupBy(
    texts.filter(({ anchor, text }) => anchor === 'middle' && axisValue(text) !== null),
    ({ at }) => at[1],
  );
  const along = [...rows.values()].toSorted((a, b) => b.length - a.length)[0] ?? [];
  const yAt = scale(upright.map(({ at, text }) => [at[1] - 3, numberOf(text)]));
  const xAt = scale(along.map(({ at, text }) => [at[0], axisValue(text) ?? 0]));
  return drawing.shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.closed !== true && (shape.stroke?.widthPt ?? 0) > 1
      ? [shape.points.map(([x, y]) => ({ x: xAt(x), y: yAt(y) }))]
      : [],
  );
}

function scale(ticks: readonly (readonly [number, number])[]): (place: number) => number {
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (first === undefined || last === undefined || first[0] === last[0]) {
    throw new Error('An axis has fewer than two ticks.');
  }
  return (place) => first[1] + ((place - first[0]) * (last[1] - first[1])) / (last[0] - first[0]);
}

const numberOf = (text: string) => Number(text.replace('−', '-'));
const isNumber = (text: string) => /^−?\d+(\.\d+)?$/.test(text);

/** A tick of an axis: seconds for a time, else the number. */
function axisValue(text: string): number | null {
  if (isNumber(text)) return numberOf(text);
  const [, hours, rest] = /^(\d+) h(?: (\d+))?$/.exec(text) ?? [];
  if (hours !== undefined) return 3600 * Number(hours) + 60 * Number(rest ?? 0);
  const [, count, unit] = /^(\d+) (min|s)$/.exec(text) ?? [];
  return count === undefined ? null : Number(count) * (unit === 'min' ? 60 : 1);
}

/** `0:27:10` in a text after some words [s]. */
export function clockAfter(text: string, words: string): number | null {
  const [, hours, minutes, seconds] =
    new RegExp(`${words} (\\d+):(\\d\\d):(\\d\\d)`).exec(text) ?? [];
  return hours === undefined ? null : 3600 * Number(hours) + 60 * Number(minutes) + Number(seconds);
}

/** The numbers that a pattern's groups find. */
export function numbersIn(text: string, pattern: RegExp): readonly number[] {
  const found = pattern.exec(text);
  if (found === null) throw new Error(`The sheet does not say ${pattern}: ${text}`);
  return found.slice(1).map((part) => numberOf(part ?? ''));
}

/** Items by a key, in the order of their first. */
export function groupBy<T, K>(items: readonly T[], keyOf: (item: T) => K): ReadonlyMap<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const known = groups.get(keyOf(item));
    if (known === undefined) groups.set(keyOf(item), [item]);
    else known.push(item);
  }
  return groups;
}
