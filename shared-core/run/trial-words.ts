import type { Trial } from './run-settings.ts';

/**
 * What a trial before heat came to, in words.
 *
 * @example
 * trialWords({ trial: 'sound', worked: true }) // => "call heard at the still"
 * trialWords({ trial: 'screen', worked: false }) // => "class screen not read from the back row"
 */
export function trialWords({ trial, worked }: Pick<Trial, 'trial' | 'worked'>): string {
  const not = worked ? '' : 'not ';
  return trial === 'sound'
    ? `call ${not}heard at the still`
    : `class screen ${not}read from the back row`;
}
