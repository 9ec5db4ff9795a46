/** `1 run`, `8 runs`, `1.5 plates`: a number and what it counts, in the form that goes with it. */
export function counted(count: number | string, what: string): string {
  return `${count} ${what}${Number(count) === 1 ? '' : 's'}`;
}
