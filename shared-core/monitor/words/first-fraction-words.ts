import { worded } from '../../wording/index.ts';
import type { FirstFractionProgress } from '../monitor-facts.ts';

/** How far the convention for the first fraction is met: `3.2 of 5 mL`, `12 of 30 drops`. */
export function firstFractionWords({ done, wanted, unit }: FirstFractionProgress): string {
  return worded('{done} of {wanted} {unit}', {
    done: done.toFixed(unit === 'drops' ? 0 : 1),
    wanted,
    unit: unitWords(unit),
  });
}

/** Only drops have a name of their own in each language. */
export function unitWords(unit: FirstFractionProgress['unit']): string {
  return unit === 'drops' ? worded('drops') : unit;
}
