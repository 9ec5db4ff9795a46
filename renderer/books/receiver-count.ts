import { cutsOfRun, type RunInput, standingMarks } from '#shared-core';

/** How many receivers a run had, as far as its marks tell; each is a liquid of its own. */
export function receiverCount(inputs: readonly RunInput[], endS: number): number {
  const changes = standingMarks(inputs).filter(({ mark }) => mark.type === 'receiver-changed');
  return Math.max(1, cutsOfRun({ inputs, endS }).length, changes.length + 1);
}
