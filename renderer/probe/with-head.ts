import type { SerialSource } from '#shared-core';

/** The source with the channel that is shown under this name as its still head. */
export function withHead(source: SerialSource, shown: string): SerialSource {
  const renamed = Object.entries(source.channels ?? {});
  // What the probe itself calls it, under whatever name it is shown.
  const spoken = renamed.find(([, name]) => name === shown)?.[0] ?? shown;
  const others = renamed.filter(([from, name]) => from !== spoken && name !== 'head');
  return { ...source, channels: { ...Object.fromEntries(others), [spoken]: 'head' } };
}
