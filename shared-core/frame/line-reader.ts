import type { SerialSource } from '../contract/probe-schemas.ts';
import type { Result } from '../result/index.ts';
import { channelsForNames } from './channel-for-name.ts';
import { parsePlainText } from './parse-plain-text.ts';
import { createPowerOnScreen } from './power-on-screen.ts';
import type { LineRejection, RawValue } from './raw-value.ts';
import { type ChannelValue, toChannelValue } from './to-channel-value.ts';

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
  'language' | 'unit' | 'decimalComma' | 'pattern'
>;

/**
 * Turns lines into channel values in the language and units that were chosen, and remembers what it
 * must to tell a power-on value from a reading. One reader belongs to one opening of a port.
 *
 * @example
 * const reader = createLineReader({ language: 'auto', unit: '°C', decimalComma: false, pattern: null });
 * reader.read('head,78.42,pot,91.3').values.length // => 2
 * reader.read('%&$').values.length // => 0
 */
export function createLineReader(options: LineReaderOptions): LineReader {
  const powerOn = createPowerOnScreen();
  return {
    read(line) {
      const parsed = parseLine(line, options);
      if (!parsed.ok) return { text: line, values: [], rejections: [parsed.error] };
      const channels = channelsForNames(parsed.value.map(({ name }) => name));
      const values: ChannelValue[] = [];
      const rejections: LineRejection[] = [];
      for (const [index, raw] of parsed.value.entries()) {
        const converted = toChannelValue(channels[index] ?? 'head', raw, options.unit);
        if (converted.ok) values.push(powerOn.screen(converted.value));
        else rejections.push(converted.error);
      }
      return { text: line, values, rejections };
    },
  };
}

function parseLine(
  line: string,
  options: LineReaderOptions,
): Result<readonly RawValue[], LineRejection> {
  return parsePlainText(line, options);
}
