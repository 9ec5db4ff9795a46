import { isBookMark, type Mark, type MarkBody, type RunInput, standingMarks } from '#shared-core';

/** What the books of a run are made from, in the order of time: what was read at the still as well as what was measured later. */
export function measurementsIn(inputs: readonly RunInput[]): readonly Mark[] {
  return standingMarks(inputs).filter(
    ({ mark }) => isReadAtStill(mark) || (isBookMark(mark) && mark.type !== 'proof-burned'),
  );
}

function isReadAtStill(mark: MarkBody): boolean {
  switch (mark.type) {
    case 'volume-read':
    case 'mass-read':
    case 'strength-read':
      return true;
    case 'receiver-changed':
      return mark.volumeMl !== null;
    default:
      return false;
  }
}
