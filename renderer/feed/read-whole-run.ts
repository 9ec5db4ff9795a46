import type { RequestAnswer, Service, ServiceProblem } from '#shared-core';

export interface RunReader {
  readonly service: Service;
  readonly breathe: () => Promise<void>;
  /** Asked before each page is taken: whoever has turned to another run meanwhile gets no more of this one. */
  readonly isWanted: () => boolean;
}

/** Reads a run page by page from an input on; answers what went wrong, or null at the end. */
export async function readWholeRun(
  { service, breathe, isWanted }: RunReader,
  runId: string,
  fromIndex: number,
  takePage: (page: RequestAnswer<'runs/read'> & { readonly fromIndex: number }) => void,
): Promise<ServiceProblem | null> {
  let next: number | null = fromIndex;
  while (next !== null && isWanted()) {
    const from: number = next;
    const answer = await service.request('runs/read', { runId, fromIndex: from });
    if (!isWanted()) return null;
    if (!answer.ok) return answer.error;
    takePage({ ...answer.value, fromIndex: from });
    next = answer.value.nextIndex;
    if (next !== null) await breathe();
  }
  return null;
}
