import type { RunSettings } from '../run/index.ts';
import { worded } from '../wording/index.ts';

/** What of the charge nobody stated: every share of it hangs on that. */
export function assumedChargeWords({
  volumeMl,
  strengthAbv,
  assumed = [],
}: RunSettings['charge']): readonly string[] {
  return assumed.map((part) =>
    part === 'volume'
      ? worded('Nobody stated the volume of the charge: {volume} mL is assumed.', {
          volume: volumeMl,
        })
      : worded('Nobody stated the strength of the charge: {strength} % vol is assumed.', {
          strength: strengthAbv,
        }),
  );
}
