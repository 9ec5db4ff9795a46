import type { Result } from '../result/index.ts';
import type { EventBody, EventName } from './events.ts';
import type { RequestAnswer, RequestBody, RequestName } from './requests.ts';
import type { ServiceProblem } from './service-problem.ts';

/** The one door between a window and the services, whatever shell carries it. */
export interface Service {
  request<N extends RequestName>(
    name: N,
    body: RequestBody<N>,
  ): Promise<Result<RequestAnswer<N>, ServiceProblem>>;
  /** Calls `listener` on every event of that name; the returned function ends it. */
  on<N extends EventName>(name: N, listener: (body: EventBody<N>) => void): () => void;
}
