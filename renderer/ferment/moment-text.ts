const pad = (value: number) => String(value).padStart(2, '0');

/** A moment as a `datetime-local` field holds it, in local time. */
export function momentText(date: Date): string {
  const day = [date.getFullYear(), pad(date.getMonth() + 1), pad(date.getDate())].join('-');
  return `${day}T${pad(date.getHours())}:${pad(date.getMinutes())}`;
}

/** ISO 8601 in UTC; null where the field is empty or holds no moment. */
export function momentIso(text: string): string | null {
  const date = new Date(text);
  return text === '' || Number.isNaN(date.getTime()) ? null : date.toISOString();
}
