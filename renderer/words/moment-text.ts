const pad = (value: number) => String(value).padStart(2, '0');

/** A moment as a `datetime-local` field holds it, to the minute in the person's own zone; empty where there is none. */
export function momentText(moment: Date | string): string {
  const date = new Date(moment);
  if (Number.isNaN(date.getTime())) return '';
  const day = [date.getFullYear(), pad(date.getMonth() + 1), pad(date.getDate())].join('-');
  return `${day}T${pad(date.getHours())}:${pad(date.getMinutes())}`;
}

/** By so much clocks go back where summer time ends: an hour, half of one on Lord Howe Island (IANA time zone database) [ms]. */
const turnedBackMs = [0, 1_800_000, 3_600_000] as const;

/**
 * The moment in such a field, ISO 8601 in UTC; null where the field is empty or holds none. The field says less than is known: no seconds,
 * and not which of the two where a clock that goes back shows a minute twice. Of all moments that it can mean, the one nearest to `near` counts, so
 * that a field which was left alone says what it was filled with.
 */
export function momentIso(text: string, near: Date | string): string | null {
  const first = new Date(text);
  if (text === '' || Number.isNaN(first.getTime())) return null;
  const nearMs = new Date(near).getTime();
  if (momentText(new Date(nearMs)) === text) return new Date(nearMs).toISOString();
  const meant = turnedBackMs
    .map((laterMs) => new Date(first.getTime() + laterMs))
    .filter((moment) => momentText(moment) === text);
  const offMs = (moment: Date) => Math.abs(moment.getTime() - nearMs);
  return meant
    .reduce((best, moment) => (offMs(moment) < offMs(best) ? moment : best), first)
    .toISOString();
}
