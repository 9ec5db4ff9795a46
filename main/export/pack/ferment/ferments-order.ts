import { setImmediate } from 'node:timers/promises';
import { type FermentStudy, studyFerment } from '#shared-core';
import { localIso } from '../../../run-library/index.ts';
import type { PackOrder } from '../pack-order.ts';
import { fermentPackKind } from './ferment-pack-kind.ts';

/** The pack of some ferments, to be made. */
export function fermentsOrder({
  ferments,
  createdMs,
}: {
  readonly ferments: readonly Parameters<typeof studyFerment>[0][];
  readonly createdMs: number;
}): PackOrder<FermentStudy> {
  return {
    kind: fermentPackKind,
    createdMs,
    async work(onStudied) {
      const found: FermentStudy[] = [];
      for (const [index, ferment] of ferments.entries()) {
        onStudied(ferment.kept.stated.name, index, ferments.length);
        const study = studyFerment(ferment);
        found.push({ ...study, startedAtIso: localIso(study.startedAtIso) });
        // Thousands of possible ferments were weighed: others get their turn.
        await setImmediate();
      }
      return found;
    },
  };
}
