import { assertNever } from '../result/index.ts';
import { asGiven, worded } from '../wording/index.ts';
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
      return worded(
        'The line “{text}” holds no number that can be understood: choose another language or speed.',
        { text: asGiven(printable(rejection.text, 60)) },
      );
    case 'ambiguous-comma':
      return worded(
        '“{text}” may be one number with a decimal comma or two numbers: say which in the probe settings.',
        { text: asGiven(printable(rejection.text, 60)) },
      );
    case 'no-value':
      return worded('The probe says it has no value for {text}: is the sensor plugged in?', {
        text: asGiven(printable(rejection.text, 30)),
      });
    case 'too-long':
      return worded('Lines arrive without an end: the speed is probably wrong.');
    case 'outside-range':
      return worded('{text} cannot be a temperature: check the unit in the probe settings.', {
        text: asGiven(printable(rejection.text, 40)),
      });
    case 'checksum':
      return worded(
        'What arrived was damaged: check the cable and the speed. If that happens every time, its checksum is of another kind: describe the line with a pattern.',
      );
    case 'answer-error':
      // Words of the program where a protocol has only numbers for its errors.
      return worded('The probe answered with an error: {text}.', {
        text: printable(rejection.text, 100),
      });
    default:
      return assertNever(rejection);
  }
}
