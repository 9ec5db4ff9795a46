/** A time as the field for one takes it, in the person's own zone; empty where there is none. */
export function localMinute(iso: string): string {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return '';
  return new Date(date.getTime() - 60_000 * date.getTimezoneOffset()).toISOString().slice(0, 16);
}
