/**
 * A moment as ISO 8601 in this computer's zone, with the offset that holds there at that moment: `2026-03-18T10:15:00.000+01:00`.
 * What is no moment stays as it is.
 */
export function localIso(iso: string): string {
  const atMs = Date.parse(iso);
  if (!Number.isFinite(atMs)) return iso;
  const offsetMin = -new Date(atMs).getTimezoneOffset();
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  const size = Math.abs(offsetMin);
  const offset = `${offsetMin < 0 ? '-' : '+'}${two(size / 60)}:${two(size % 60)}`;
  return `${new Date(atMs + 60_000 * offsetMin).toISOString().slice(0, -1)}${offset}`;
}
