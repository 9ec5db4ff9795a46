import { assertNever } from '../result/index.ts';
import { printable } from './latin-1.ts';
import type { LineRejection } from './raw-value.ts';

/**
 * One plain sentence on why a line was not taken, and what to try.
 *
 * @example
 * explainRejection({ kind: 'no-value', text: 'head' }) // => "The probe says it has no value for head: is the sensor plugged in?"
 */
export function explainRejection(rejection: LineRejection): string {
  switch (rejection.kind) {
    case 'not-understood':
      return `The line “${printable(rejection.text, 60)}” holds no number that can be understood: choose another language or speed.`;
    case 'ambiguous-comma':
      return `“${printable(rejection.text, 60)}” may be one number with a decimal comma or two numbers: say which in the probe settings.`;
    case 'no-value':
      return `The probe says it has no value for ${printable(rejection.text, 30)}: is the sensor plugged in?`;
    case 'too-long':
      return 'Lines arrive without an end: the speed is probably wrong.';
    case 'outside-range':
      return `${printable(rejection.text, 40)} cannot be a temperature: check the unit in the probe settings.`;
    case 'checksum':
      return 'What arrived was damaged: check the cable and the speed. If that happens every time, its checksum is of another kind: describe the line with a pattern.';
    case 'answer-error':
      return `The probe answered with an error: ${printable(rejection.text, 60)}.`;
    default:
      return assertNever(rejection);
  }
}
