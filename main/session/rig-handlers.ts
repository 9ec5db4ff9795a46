import type { RigMemory } from '../rigs/index.ts';
import type { RequestHandlers } from './request-handlers.ts';

type RigRequest = Extract<keyof RequestHandlers, `rigs/${string}`>;

/** Handlers of the set-ups that are kept from one lesson to the next. */
export function createRigHandlers(rigs: RigMemory): Pick<RequestHandlers, RigRequest> {
  return {
    'rigs/list': () => rigs.list(),
    'rigs/keep': ({ name, setUp }) => rigs.keep(name, setUp),
    'rigs/forget': ({ name }) => rigs.forget(name),
  };
}
