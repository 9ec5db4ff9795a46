import { assertNever, type correctionFrom, say } from '#shared-core';
import { type Decimal, numberWords, quantityWords } from '../words/index.ts';
import type { Settling } from './settling.ts';

type CalibrationProblem = Extract<ReturnType<typeof correctionFrom>, { ok: false }>['error'];

/** Whether the bath has settled, and if not what to do. */
export function settlingWords(settled: Settling, isThisBath: boolean, decimal: Decimal): string {
  if (settled.ok) {
    const steady = say('Steady at {reading}', {
      reading: quantityWords(settled.value.readingC, 2, '°C', decimal),
    });
    return isThisBath ? `${steady}.` : say('{steady}: the probe is not in this bath.', { steady });
  }
  const problem = settled.error;
  switch (problem.kind) {
    case 'not-heard':
      return say('No probe is heard yet: connect it under “Probe”.');
    case 'not-a-number':
      return say(
        'The probe sends something that is no temperature. Check plug and wire once the bath is cold.',
      );
    case 'too-short':
      return say('Listening … {span} of {leastSpan} s. Leave the probe as it hangs.', {
        span: numberWords(problem.spanS, 0, decimal),
        leastSpan: problem.leastSpanS,
      });
    case 'still-drifting':
      return say(
        'Still drifting, {driftKPerMin} K/min. Wait; stir the ice, keep the steam coming.',
        { driftKPerMin: numberWords(problem.driftKPerMin, 1, decimal) },
      );
    case 'too-noisy':
      return say(
        'Jumping by {noise} K. The probe must hang still, clear of the glass: clamp it anew, in a cold bath.',
        { noise: numberWords(problem.noiseK, 1, decimal) },
      );
    default:
      return assertNever(problem);
  }
}

export function calibrationProblemWords(problem: CalibrationProblem, decimal: Decimal): string {
  switch (problem.kind) {
    case 'not-a-number':
      return say('The points hold something that is no temperature. Take them again.');
    case 'points-too-close':
      return say('The two points are too close together. Was one of them taken in the wrong bath?');
    case 'points-swapped':
      return say('The probe showed less in steam than in ice. Were the points swapped?');
    case 'correction-too-large':
      return say(
        'The probe would need {correction} K: more than a good probe ever does. Check the bath, the wire and the kind of probe.',
        { correction: numberWords(problem.correctionK, 1, decimal) },
      );
    case 'gain-implausible':
      return say('Between the points the probe rises too fast or too slowly. Check both baths.');
    case 'too-uncertain':
      return say('Known only to ± {number} K: worse than not calibrating. Take the points again.', {
        number: numberWords(2 * problem.standardUncertaintyK, 1, decimal),
      });
    default:
      return assertNever(problem);
  }
}
