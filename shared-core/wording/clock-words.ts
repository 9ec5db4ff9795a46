/**
 * A moment of a run as a clock that has not yet struck the next second, as every other clock in the room shows it. The one form in
 * which any moment is told; spans of time have words of their own.
 *
 * @param timeS since the run began [s]; shown as 0 below 0
 *
 * @example
 * clockWords(432.7) // => "0:07:12"
 */
export function clockWords(timeS: number): string {
  const whole = Math.max(0, Math.floor(timeS));
  const pad = (value: number) => String(value).padStart(2, '0');
  return `${Math.floor(whole / 3600)}:${pad(Math.floor(whole / 60) % 60)}:${pad(whole % 60)}`;
}
