import type { z } from 'zod';
import type {
  RequestAnswer,
  RequestName,
  Result,
  requests,
  SecondScreen,
  ServiceProblem,
} from '#shared-core';

/** A request's body after it was parsed, with every default filled in. */
export type ParsedBody<N extends RequestName> = z.output<(typeof requests)[N]['body']>;

/** Who asks. */
export interface Asker {
  /** False for a second, viewing window. */
  readonly mayCommand: boolean;
  /** The shell's way to a second screen; never given to a window that only views. */
  readonly secondScreen?: SecondScreenDoor;
}

export interface SecondScreenDoor {
  readonly offer: SecondScreen;
  /** Opens it, or brings it to the front; absent where an address does. */
  readonly open?: () => void;
}

/** One handler for every request of the contract. */
export type RequestHandlers = {
  readonly [N in RequestName]: (
    body: ParsedBody<N>,
    asker: Asker,
  ) => Promise<Result<RequestAnswer<N>, ServiceProblem>>;
};
