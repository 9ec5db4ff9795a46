import type { SerialSource } from '../contract/probe-schemas.ts';
import { channelsForNames } from './channel-for-name.ts';
import type { LineRejection, RawValue } from './raw-value.ts';
import { type ChannelValue, toChannelValue } from './to-channel-value.ts';

export interface MeaningOptions {
  readonly language: SerialSource['language'];
  readonly unit: SerialSource['unit'];
}

/**
 * Channels, units and plausibility for the numbers of one line. In the person's own pattern the names
 * are channels already; everywhere else they are the probe's words for them.
 */
export function meaningOf(
  raws: readonly RawValue[],
  options: MeaningOptions,
): { readonly values: readonly ChannelValue[]; readonly rejections: readonly LineRejection[] } {
  const names = raws.map(({ name }) => name);
  const channels =
    options.language === 'own-pattern'
      ? names.map((name) => name ?? 'head')
      : channelsForNames(names);
  const values: ChannelValue[] = [];
  const rejections: LineRejection[] = [];
  for (const [index, raw] of raws.entries()) {
    const converted = toChannelValue(channels[index] ?? 'head', raw, options.unit);
    if (converted.ok) values.push(converted.value);
    else rejections.push(converted.error);
  }
  return { values, rejections };
}
