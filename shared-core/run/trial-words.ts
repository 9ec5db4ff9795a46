import { worded } from '../wording/index.ts';
import type { Trial } from './run-settings.ts';

/**
 * What a trial before heat came to, in words.
 *
 * @example
 * trialWords({ trial: 'sound', worked: true }) // => "call heard at the still"
 * trialWords({ trial: 'screen', worked: false }) // => "class screen not read from the back row"
 */
export function trialWords({ trial, worked }: Pick<Trial, 'trial' | 'worked'>): string {
  if (trial === 'sound') {
    return worked ? worded('call heard at the still') : worded('call not heard at the still');
  }
  return worked
    ? worded('class screen read from the back row')
    : worded('class screen not read from the back row');
}
