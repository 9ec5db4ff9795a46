import { assertNever, fail, type Result } from '../result/index.ts';
import { meaningOf } from './meaning-of.ts';
import { compilePattern, matchPattern } from './own-pattern.ts';
import { parseJsonLine } from './parse-json-line.ts';
import { parsePlainText } from './parse-plain-text.ts';
import { createPowerOnScreen } from './power-on-screen.ts';
import type { LineRejection, RawValue } from './raw-value.ts';
import type { SerialSource } from './serial-source.ts';
import type { ChannelValue } from './to-channel-value.ts';

/** What one line gave: values, and a reason for whatever gave none. */
export interface LineOutcome {
  readonly text: string;
  readonly values: readonly ChannelValue[];
  readonly rejections: readonly LineRejection[];
}

export interface LineReader {
  read(line: string): LineOutcome;
}

export type LineReaderOptions = Pick<
  SerialSource,
  'language' | 'unit' | 'decimalComma' | 'pattern' | 'channels'
>;

/**
 * Turns lines into channel values in the language and units that were chosen, and remembers what it
 * must to tell a power-on value from a reading. One reader belongs to one opening of a port.
 *
 * @example
 * const reader = createLineReader({ language: 'auto', unit: '°C', decimalComma: false, pattern: null });
 * reader.read('head,78.42,pot,91.3').values.length // => 2
 * reader.read('{"head":78.42}').values[0].value // => 78.42
 * reader.read('%&$').values.length // => 0
 */
export function createLineReader(options: LineReaderOptions): LineReader {
  const powerOn = createPowerOnScreen();
  const parse = parserFor(options);
  return {
    read(line) {
      const heard = parse(line);
      const parsed = heard.ok || !eighthBit.test(line) ? heard : parse(sevenBits(line));
      if (!parsed.ok) return { text: line, values: [], rejections: [parsed.error] };
      const { values, rejections } = meaningOf(parsed.value, options);
      return { text: line, values: values.map((value) => powerOn.screen(value)), rejections };
    },
  };
}

const eighthBit = /[\u0080-\u00ff]/;

/** Older instruments send seven bits and a parity bit, which a port set to eight bits takes for part of the letter. */
function sevenBits(line: string): string {
  return [...line].map((letter) => String.fromCharCode(letter.charCodeAt(0) & 0x7f)).join('');
}

type ParseLine = (line: string) => Result<readonly RawValue[], LineRejection>;

function parserFor({ language, pattern, decimalComma }: LineReaderOptions): ParseLine {
  switch (language) {
    case 'json-lines':
      return parseJsonLine;
    case 'own-pattern': {
      const compiled = compilePattern(pattern ?? '');
      return (line) =>
        compiled.ok
          ? matchPattern(compiled.value, line, decimalComma)
          : fail({ kind: 'not-understood', text: line });
    }
    case 'auto':
      return (line) =>
        /^\s*[{[]/.test(line) ? parseJsonLine(line) : parsePlainText(line, { decimalComma });
    case 'plain-text':
    case 'balance':
    // What these two answer is read by their own talks.
    case 'scpi':
    case 'modbus-rtu':
      return (line) => parsePlainText(line, { decimalComma });
    default:
      return assertNever(language);
  }
}
