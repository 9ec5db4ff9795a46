/** Steps that scales and floats are marked in, largest first. */
const gravitySteps = [0.005, 0.002, 0.001, 0.0005, 0.0001] as const;
const massSteps = [10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.01] as const;

/** Fewer different values than this may agree with a coarse scale by chance. */
const fewestValues = 4;

/**
 * The step in which a series was read: the largest usual step q with `value = n q` for nearly all values.
 *
 * @param values readings, in the unit of the steps
 * @param kind gravity (steps from 0.0001 to 0.005) or mass in grams (steps from 0.01 to 10)
 * @returns the step; 0.001 or 1 g where there are too few values to tell
 *
 * Source: rounding; a value rounded to q has a standard uncertainty of q/√12 (JCGM 100, F.2.2.1).
 * @example
 * scaleResolution([1.08, 1.075, 1.06, 1.045], 'gravity') // => 0.005
 * scaleResolution([1200, 1199, 1186, 1171], 'mass') // => 1
 */
export function scaleResolution(values: readonly number[], kind: 'gravity' | 'mass'): number {
  const steps = kind === 'gravity' ? gravitySteps : massSteps;
  const usual = kind === 'gravity' ? 0.001 : 1;
  if (new Set(values).size < fewestValues) {
    const finer = steps.filter((step) => step <= usual);
    return finer.find((step) => share(values, step) === 1) ?? usual;
  }
  return steps.find((step) => share(values, step) >= 0.95) ?? (steps.at(-1) as number);
}

/** The share of values that are multiples of a step. */
function share(values: readonly number[], step: number): number {
  const isMultiple = (value: number) => Math.abs(value / step - Math.round(value / step)) < 0.02;
  return values.filter(isMultiple).length / Math.max(1, values.length);
}
