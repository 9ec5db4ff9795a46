import type { EventBody, EventName, Result, ServiceProblem } from '#shared-core';

/** The services as a shell sees them: requests by name, events by name. `createSession` is the one. */
export interface ServiceHandler {
  handle(
    name: string,
    body: unknown,
    caller: { readonly mayCommand: boolean },
  ): Promise<Result<unknown, ServiceProblem>>;
  on<N extends EventName>(name: N, listener: (body: EventBody<N>) => void): () => void;
}
