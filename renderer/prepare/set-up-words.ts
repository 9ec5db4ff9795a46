import { type SetUp, say } from '#shared-core';
import { type Decimal, quantityWords } from '../words/index.ts';

/** What a kept set-up brings, in one line. */
export function setUpWords(
  { name, isNameAssumed, charge, rig, source, correction, leastStrengthAbv }: SetUp,
  decimal: Decimal,
): string {
  const probe =
    source === null
      ? say('no probe')
      : source.kind === 'serial'
        ? say('probe at {path}', { path: source.path })
        : say('{count, plural, one {# probe} other {# probes}}', { count: source.probes.length });
  const parts = [
    !isNameAssumed && name,
    say('{volume} of {strength}', {
      volume: quantityWords(charge.volumeMl, 0, 'mL', decimal),
      strength: quantityWords(charge.strengthAbv, 1, '% vol', decimal),
    }),
    rig.description,
    rig.plates !== null &&
      say('{count, plural, one {# plate} other {# plates}}', { count: rig.plates }),
    correction === null ? probe : say('{probe}, calibrated', { probe }),
    say('heat off at {leastStrength}', {
      leastStrength: quantityWords(leastStrengthAbv, 0, '% vol', decimal),
    }),
  ];
  return parts.filter((part) => part !== false && part !== '').join(' · ');
}
