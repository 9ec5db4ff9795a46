import { parseJson } from '../result/index.ts';
import { type LinkChange, linkChangeSchema, type MarkBody, markBodySchema } from '../run/index.ts';
import type { CsvDialect } from './csv-dialect.ts';

/** What a cell in the marks column stands for. */
export type MarkCell =
  | { readonly kind: 'mark'; readonly mark: MarkBody }
  | { readonly kind: 'link'; readonly change: Pick<LinkChange, 'state' | 'reason'> }
  | { readonly kind: 'end' };

const endCell = 'run-ended';

/**
 * A mark or link change as a readable cell: its type, then `name=value` pairs, numbers with the table's decimal sign.
 *
 * @example
 * writeMarkCell({ kind: 'mark', mark: { type: 'receiver-changed', volumeMl: 35 } }) // => "receiver-changed volumeMl=35"
 * writeMarkCell({ kind: 'mark', mark: { type: 'volume-read', volumeMl: 12.5 } }, ',') // => "volume-read volumeMl=12,5"
 * writeMarkCell({ kind: 'mark', mark: { type: 'note', text: 'Smells of pear' } }) // => "note text=\"Smells of pear\""
 * writeMarkCell({ kind: 'mark', mark: { type: 'proof-burned', cut: 2, volumeMl: 1, seen: 'burned-away', role: 'teacher', confirmed: ['proof-cold'] } }) // => "proof-burned cut=2 volumeMl=1 seen=burned-away role=teacher confirmed=[\"proof-cold\"]"
 * writeMarkCell({ kind: 'link', change: { state: 'lost', reason: 'unplugged' } }) // => "probe-lost reason=unplugged"
 */
export function writeMarkCell(cell: MarkCell, decimal: CsvDialect['decimal'] = '.'): string {
  if (cell.kind === 'end') return endCell;
  if (cell.kind === 'link') return `probe-${cell.change.state} reason=${cell.change.reason}`;
  const { type, ...details } = cell.mark;
  const pairs = Object.entries(details).flatMap(([name, value]) => {
    if (value === undefined) return [];
    const shown = show(value);
    return [`${name}=${typeof value === 'number' ? shown.replace('.', decimal) : shown}`];
  });
  return [type, ...pairs].join(' ');
}

/** Words that need no quotes. */
const bareWord = /^[a-z][a-z0-9-]*$/;

/** Lists are of bare words, so their JSON has no blank. */
function show(value: string | number | null | readonly string[]): string {
  return typeof value === 'string' && bareWord.test(value) && value !== 'null'
    ? value
    : JSON.stringify(value);
}

/**
 * The inverse of {@link writeMarkCell}, with either decimal sign; undefined when the text is no mark.
 *
 * @example
 * readMarkCell('volume-read volumeMl=12.5') // => { "kind": "mark", "mark": { "type": "volume-read", "volumeMl": 12.5 } }
 */
export function readMarkCell(text: string): MarkCell | undefined {
  const [, type = '', rest = ''] = /^([a-z-]+)(.*)$/s.exec(text.trim()) ?? [];
  if (type === endCell) return { kind: 'end' };
  const details = readDetails(rest);
  if (details === undefined) return undefined;
  const link = /^probe-(lost|back)$/.exec(type);
  if (link !== null) {
    const change = { kind: 'link', timeS: 0, state: link[1], ...details };
    const parsed = linkChangeSchema.safeParse(change);
    if (!parsed.success) return undefined;
    const { state, reason } = parsed.data;
    return { kind: 'link', change: { state, reason } };
  }
  const mark = markBodySchema.safeParse({ type, ...details });
  return mark.success ? { kind: 'mark', mark: mark.data } : undefined;
}

const detailPattern = /\s+([A-Za-z][A-Za-z0-9]*)=("(?:[^"\\]|\\.)*"|\S+)/gy;

function readDetails(text: string): Readonly<Record<string, unknown>> | undefined {
  const details: Record<string, unknown> = {};
  let end = 0;
  for (const match of text.matchAll(detailPattern)) {
    const [whole, name = '', value = ''] = match;
    details[name] =
      bareWord.test(value) && value !== 'null'
        ? value
        : parseJson(value.replace(commaNumber, '$1.$2'));
    end += whole.length;
  }
  return text.slice(end).trim() === '' ? details : undefined;
}

const commaNumber = /^(-?\d+),(\d+(?:e[+-]?\d+)?)$/;
