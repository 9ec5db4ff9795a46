import { useState } from 'react';
import type { Mark, MarkBody } from '#shared-core';
import { useWindowParts } from '../parts/index.ts';

interface LateMarks {
  readonly late: readonly Mark[];
  /** Keeps one more, or takes one back; false where it could not be, which has been told by then. */
  readonly book: (mark: MarkBody) => Promise<boolean>;
}

/** What was marked after a run, and more of it. */
export function useLateMarks(runId: string, endS: number, lateMarks: readonly Mark[]): LateMarks {
  const { commands } = useWindowParts();
  const [late, setLate] = useState(lateMarks);
  const book = async (mark: MarkBody) => {
    const booked = await commands.ask('runs/book', { runId, mark });
    if (booked === null) return false;
    const { markId } = booked;
    setLate((marks) => [...marks, { kind: 'mark', timeS: endS, markId, mark }]);
    return true;
  };
  return { late, book };
}
