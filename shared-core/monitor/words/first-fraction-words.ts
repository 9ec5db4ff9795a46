import type { FirstFractionProgress } from '../monitor-facts.ts';

/** How far the convention for the first fraction is met: `3.2 of 5 mL`, `12 of 30 drops`. */
export function firstFractionWords({ done, wanted, unit }: FirstFractionProgress): string {
  return `${done.toFixed(unit === 'drops' ? 0 : 1)} of ${wanted} ${unit}`;
}
