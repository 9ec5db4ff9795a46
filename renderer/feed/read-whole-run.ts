import type { RunPage, Service, ServiceProblem } from '#shared-core';

export interface RunReader {
  readonly service: Service;
  readonly breathe: () => Promise<void>;
}

/** Reads a run page by page from an input on; answers what went wrong, or null at the end. */
export async function readWholeRun(
  { service, breathe }: RunReader,
  runId: string,
  fromIndex: number,
  takePage: (page: RunPage & { readonly fromIndex: number }) => void,
): Promise<ServiceProblem | null> {
  let next: number | null = fromIndex;
  while (next !== null) {
    const from: number = next;
    const answer = await service.request('runs/read', { runId, fromIndex: from });
    if (!answer.ok) return answer.error;
    takePage({ ...answer.value, fromIndex: from });
    next = answer.value.nextIndex;
    if (next !== null) await breathe();
  }
  return null;
}
