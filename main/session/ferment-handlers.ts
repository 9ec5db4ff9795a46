import { succeed } from '#shared-core';
import type { FermentMemory } from '../ferments/index.ts';
import type { RequestHandlers } from './request-handlers.ts';

type FermentRequest = Extract<keyof RequestHandlers, `ferments/${string}`>;

/** Handlers of the week before. */
export function createFermentHandlers(
  ferments: FermentMemory,
): Pick<RequestHandlers, FermentRequest> {
  return {
    'ferments/list': async () => {
      const listed = await ferments.list();
      return listed.ok ? succeed({ ferments: [...listed.value] }) : listed;
    },
    'ferments/begin': ({ stated }) => ferments.begin(stated),
    'ferments/correct': ({ fermentId, stated, reason }) =>
      ferments.correct(fermentId, stated, reason),
    'ferments/enter': ({ fermentId, read }) => ferments.enter(fermentId, read),
    'ferments/withdraw': ({ fermentId, entryId }) => ferments.withdraw(fermentId, entryId),
  };
}
