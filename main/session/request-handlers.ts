import type { z } from 'zod';
import type { RequestAnswer, RequestName, Result, requests, ServiceProblem } from '#shared-core';

export type ClassView = RequestAnswer<'class-view/status'>;

type SecondScreen = NonNullable<RequestAnswer<'app/describe'>['secondScreen']>;

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
  /** Screens of the pupils' own; absent where the shell has none to give. */
  readonly classView?: ClassViewDoor;
}

/** Lets pupils look on in the local network, and shuts them out again. */
export interface ClassViewDoor {
  status(): ClassView;
  open(): Promise<ClassView>;
  shut(): Promise<ClassView>;
}

/** One handler for every request of the contract. */
export type RequestHandlers = {
  readonly [N in RequestName]: (
    body: ParsedBody<N>,
    asker: Asker,
  ) => Promise<Result<RequestAnswer<N>, ServiceProblem>>;
};
