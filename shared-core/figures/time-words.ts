/** A time axis tick, in the coarsest words that are exact: `40 s`, `25 min`, `1 h 30`. */
export function axisTimeWords(timeS: number): string {
  if (timeS === 0) return '0';
  if (timeS % 60 !== 0) return `${timeS} s`;
  const minutes = timeS / 60;
  if (minutes < 60) return `${minutes} min`;
  const rest = minutes % 60;
  return rest === 0 ? `${Math.floor(minutes / 60)} h` : `${Math.floor(minutes / 60)} h ${rest}`;
}
