import {
  assertNever,
  type CalibrationProblem,
  type Result,
  type SettledReading,
  settledLimits,
  type UnsettledProblem,
} from '#shared-core';
import { type Decimal, numberWords, quantityWords } from '../words/index.ts';

/** Whether the bath has settled, and if not what to do. */
export function settlingWords(
  settled: Result<SettledReading, UnsettledProblem>,
  isThisBath: boolean,
  decimal: Decimal,
): string {
  if (settled.ok) {
    const steady = `Steady at ${quantityWords(settled.value.readingC, 2, '°C', decimal)}`;
    return isThisBath ? `${steady}.` : `${steady}: the probe is not in this bath.`;
  }
  const problem = settled.error;
  switch (problem.kind) {
    case 'not-a-number':
      return 'The probe sends something that is no temperature. Check plug and wire once the bath is cold.';
    case 'too-short':
      return `Listening … ${numberWords(problem.spanS, 0, decimal)} of ${settledLimits.leastSpanS} s. Leave the probe as it hangs.`;
    case 'still-drifting':
      return `Still drifting, ${numberWords(problem.driftKPerMin, 1, decimal)} K/min. Wait; stir the ice, keep the steam coming.`;
    case 'too-noisy':
      return `Jumping by ${numberWords(problem.noiseK, 1, decimal)} K. The probe must hang still, clear of the glass: clamp it anew, in a cold bath.`;
    default:
      return assertNever(problem);
  }
}

export function calibrationProblemWords(problem: CalibrationProblem, decimal: Decimal): string {
  switch (problem.kind) {
    case 'not-a-number':
      return 'The points hold something that is no temperature. Take them again.';
    case 'points-too-close':
      return 'The two points are too close together. Was one of them taken in the wrong bath?';
    case 'points-swapped':
      return 'The probe showed less in steam than in ice. Were the points swapped?';
    case 'correction-too-large':
      return `The probe would need ${numberWords(problem.correctionK, 1, decimal)} K: more than a good probe ever does. Check the bath, the wire and the kind of probe.`;
    case 'gain-implausible':
      return 'Between the points the probe rises too fast or too slowly. Check both baths.';
    case 'too-uncertain':
      return `Known only to ± ${numberWords(2 * problem.standardUncertaintyK, 1, decimal)} K: worse than not calibrating. Take the points again.`;
    default:
      return assertNever(problem);
  }
}
