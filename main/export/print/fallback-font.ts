import { existsSync } from 'node:fs';

/** A font file of the system; a collection needs the name of the font in it. */
export interface SystemFont {
  readonly file: string;
  readonly name?: string;
}

/** Scripts that the report's own typeface has; signs common to all scripts are taken for had. */
const ownScripts =
  /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Common}\p{Script=Inherited}]*$/u;
const pictures = /(?:[\u{1F000}-\u{1FAFF}\u{2600}-\u{27BF}]|\u{FE0F})+/gu;
const foreign =
  /[^\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Common}\p{Script=Inherited}]+/gu;
const foreignOrNot = new RegExp(`(${foreign.source})`, 'u');
const eastAsian = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;
const hangul = /\p{Script=Hangul}/u;

const everywhere: readonly SystemFont[] = [
  { file: '/System/Library/Fonts/Supplemental/Arial Unicode.ttf' },
  { file: '/Library/Fonts/Arial Unicode.ttf' },
];
const noto = { name: 'NotoSansCJKsc-Regular' } as const;
/** Where systems keep fonts with many letters; from memory, and each is looked for before it is used. */
const fontsOf: Readonly<Record<'eastAsian' | 'hangul' | 'other', readonly SystemFont[]>> = {
  eastAsian: [
    ...everywhere,
    { file: 'C:\\Windows\\Fonts\\msyh.ttc', name: 'MicrosoftYaHei' },
    { file: 'C:\\Windows\\Fonts\\simhei.ttf' },
    { file: '/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf' },
    { file: '/usr/share/fonts/opentype/noto/NotoSansCJK-Regular.ttc', ...noto },
    { file: '/usr/share/fonts/noto-cjk/NotoSansCJK-Regular.ttc', ...noto },
  ],
  hangul: [
    ...everywhere,
    { file: 'C:\\Windows\\Fonts\\malgun.ttf' },
    { file: '/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf' },
    { file: '/usr/share/fonts/opentype/noto/NotoSansCJK-Regular.ttc', ...noto },
    { file: '/usr/share/fonts/noto-cjk/NotoSansCJK-Regular.ttc', ...noto },
  ],
  other: [
    ...everywhere,
    { file: 'C:\\Windows\\Fonts\\segoeui.ttf' },
    { file: '/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf' },
    { file: '/usr/share/fonts/dejavu/DejaVuSans.ttf' },
  ],
};

/** Whether the report's own typeface has every letter of a text. */
export const hasOwnLetters = (text: string): boolean => ownScripts.test(text);

/** A font of this system for a text that the report's own typeface can't write; null for none, or no need. */
export function fallbackFont(
  text: string,
  exists: (file: string) => boolean = existsSync,
): SystemFont | null {
  if (hasOwnLetters(text)) return null;
  const script = hangul.test(text) ? 'hangul' : eastAsian.test(text) ? 'eastAsian' : 'other';
  return fontsOf[script].find(({ file }) => exists(file)) ?? null;
}

/** A text cut where its letters ask for another font, at least one piece. */
export function piecesByLetters(text: string): readonly string[] {
  const pieces = text.split(foreignOrNot).filter((piece) => piece !== '');
  return pieces.length === 0 ? [text] : pieces;
}

const leftOut = '[…]';

/** A text without what no font at hand can write: a gap that says it is one, not a row of empty boxes. */
export function writable(text: string, exists: (file: string) => boolean = existsSync): string {
  const plain = text.replace(pictures, '').trimEnd();
  if (hasOwnLetters(plain) || fallbackFont(plain, exists) !== null) return plain;
  return plain.replace(foreign, leftOut);
}
