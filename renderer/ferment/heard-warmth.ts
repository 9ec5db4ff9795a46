import type { KeptFerment, WarmthReport } from '#shared-core';

const hourMs = 3_600_000;

/** What a probe heard of a ferment, in hours since it was begun; empty while that is read, or where none was in it. */
export function heardWarmth(
  { stated }: KeptFerment,
  warmth: WarmthReport | null,
): readonly { readonly timeH: number; readonly temperatureC: number }[] {
  const beganMs = Date.parse(stated.beganAtIso);
  return (warmth?.stretches ?? []).map(({ atIso, meanC }) => ({
    timeH: Math.max(0, (Date.parse(atIso) - beganMs) / hourMs),
    temperatureC: meanC,
  }));
}
