/**
 * A tick of a time axis, in the coarsest words that are exact.
 *
 * @param timeS [s], whole, ≥ 0
 *
 * @example
 * axisTimeWords(40) // => "40 s"
 * axisTimeWords(1500) // => "25 min"
 * axisTimeWords(5700) // => "1 h 35"
 */
export function axisTimeWords(timeS: number): string {
  if (timeS % 60 !== 0) return `${timeS} s`;
  const minutes = timeS / 60;
  if (minutes < 60) return `${minutes} min`;
  const hours = `${Math.floor(minutes / 60)} h`;
  const rest = minutes % 60;
  return rest === 0 ? hours : `${hours} ${String(rest).padStart(2, '0')}`;
}
