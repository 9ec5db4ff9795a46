import { succeed } from '#shared-core';
import type { WarmthKeeper } from '../ferments/index.ts';
import type { RequestHandlers } from './request-handlers.ts';

type WarmthRequest = Extract<keyof RequestHandlers, `warmth/${string}`>;

/** Handlers of a ferment that is kept warm. */
export function createWarmthHandlers(warmth: WarmthKeeper): Pick<RequestHandlers, WarmthRequest> {
  return {
    'warmth/now': async () => succeed({ kept: warmth.now() }),
    'warmth/report': ({ fermentId }) => warmth.report(fermentId),
    'warmth/keep': (body) => warmth.keep(body),
    'warmth/leave': ({ fermentId }) => warmth.leave(fermentId),
  };
}
