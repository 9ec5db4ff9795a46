import { columnRole } from '../csv/index.ts';

/** What a column of a ferment's table holds; factors turn its numbers into hours, grams and so on. */
export type FermentColumn =
  | { readonly kind: 'time'; readonly perS: number | null }
  | { readonly kind: 'gravity'; readonly scale: 'gravity' | 'plato' | 'oechsle' }
  | { readonly kind: 'mass'; readonly perG: number; readonly isLoss: boolean }
  | { readonly kind: 'temperature'; readonly isFahrenheit: boolean }
  | { readonly kind: 'bubbles' }
  | { readonly kind: 'degassed' };

const dayWords = /^(time[ _]*)?[([]?(d|days?|tage?)[)\]]?$/i;
const kindWords: readonly (readonly [RegExp, FermentColumn])[] = [
  [/degas|entgast/i, { kind: 'degassed' }],
  [/bubble|blasen/i, { kind: 'bubbles' }],
  [/plato|°\s*p\b|brix/i, { kind: 'gravity', scale: 'plato' }],
  [/oechsle|öchsle|°\s*oe\b/i, { kind: 'gravity', scale: 'oechsle' }],
  [
    /gravity|\bs\.?g\.?\b|\b[of]g\b|density|dichte|hydrometer|aräometer|spindel/i,
    { kind: 'gravity', scale: 'gravity' },
  ],
];
const elsewhere = /room|ambient|\bair\b|raum|umgebung|head|pot/i;

/** What the title of a column says of a ferment; null for a column that is none of its business. */
export function fermentColumn(title: string): FermentColumn | null {
  const plain = title.trim().replace(/_/g, ' ');
  if (dayWords.test(plain)) return { kind: 'time', perS: 86_400 };
  const known = kindWords.find(([words]) => words.test(plain));
  if (known !== undefined) return known[1];
  if (/mass|weight|gewicht|scale|balance/i.test(plain)) {
    const isLoss = /loss|lost|verlust/i.test(plain);
    return { kind: 'mass', perG: /\bkg\b|kilo/i.test(plain) ? 1000 : 1, isLoss };
  }
  const role = columnRole(title);
  if (role.kind === 'time') return { kind: 'time', perS: role.perS };
  if (role.kind === 'date') return { kind: 'time', perS: null };
  const isTemperature =
    /temp/i.test(plain) ||
    role.kind === 'temperature' ||
    (role.kind === 'channel' && role.unit !== null && /°/.test(role.unit));
  if (!isTemperature || elsewhere.test(plain)) return null;
  return { kind: 'temperature', isFahrenheit: /°\s*f\b|\bf\b|fahrenheit|degf/i.test(plain) };
}
