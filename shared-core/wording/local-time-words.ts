const parts = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d).*?(Z|[+-]\d\d:\d\d)$/;

/** The offset of a moment's zone, written out: `UTC+01:00`. */
export function offsetWords(iso: string): string {
  const offset = parts.exec(iso)?.[3] ?? 'Z';
  return `UTC${offset === 'Z' ? '+00:00' : offset.replace('-', '−')}`;
}

/** A moment to the minute in the zone that it is written in, with the offset of that zone: `2026-03-18 10:15 (UTC+01:00)`. */
export function localTimeWords(iso: string): string {
  const [, day = iso, minute = ''] = parts.exec(iso) ?? [];
  return minute === '' ? iso : `${day} ${minute} (${offsetWords(iso)})`;
}

/** The day of a moment in the zone that another one is written in: `2026-03-18`. */
export function localDayWords(iso: string, zoneOfIso: string): string {
  const [, sign = '+', hours = '0', minutes = '0'] = /([+-])(\d\d):(\d\d)$/.exec(zoneOfIso) ?? [];
  const offsetMin = (sign === '-' ? -1 : 1) * (60 * Number(hours) + Number(minutes));
  const atMs = Date.parse(iso);
  return Number.isFinite(atMs)
    ? new Date(atMs + 60_000 * offsetMin).toISOString().slice(0, 10)
    : iso.slice(0, 10);
}
