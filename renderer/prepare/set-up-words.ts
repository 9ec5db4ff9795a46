import type { SetUp } from '#shared-core';
import { counted, type Decimal, quantityWords } from '../words/index.ts';

/** What a kept set-up brings, in one line. */
export function setUpWords(
  { name, charge, rig, source, correction, leastStrengthAbv }: SetUp,
  decimal: Decimal,
): string {
  const probe =
    source === null
      ? 'no probe'
      : source.kind === 'serial'
        ? `probe at ${source.path}`
        : counted(source.probes.length, 'probe');
  const parts = [
    name,
    `${quantityWords(charge.volumeMl, 0, 'mL', decimal)} of ${quantityWords(charge.strengthAbv, 1, '% vol', decimal)}`,
    rig.description,
    rig.plates !== null && counted(rig.plates, 'plate'),
    correction === null ? probe : `${probe}, calibrated`,
    `heat off at ${quantityWords(leastStrengthAbv, 0, '% vol', decimal)}`,
  ];
  return parts.filter((part) => part !== false && part !== '').join(' · ');
}
