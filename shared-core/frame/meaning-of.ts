import { channelsForNames } from './channel-for-name.ts';
import type { LineRejection, RawValue } from './raw-value.ts';
import type { SerialSource } from './serial-source.ts';
import { type ChannelValue, toChannelValue } from './to-channel-value.ts';

export interface MeaningOptions {
  readonly language: SerialSource['language'];
  readonly unit: SerialSource['unit'];
  /** Channels under other names: what the probe calls `head` may be the balance under the receiver. */
  readonly channels?: SerialSource['channels'];
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
    const spoken = channels[index] ?? 'head';
    // Renamed before it is converted: only then is "85.2 g" the mass that it is.
    const converted = toChannelValue(options.channels?.[spoken] ?? spoken, raw, options.unit);
    if (converted.ok) values.push(converted.value);
    else rejections.push(converted.error);
  }
  return { values, rejections };
}
