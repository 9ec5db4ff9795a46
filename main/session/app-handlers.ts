import process from 'node:process';
import { fail, succeed } from '#shared-core';
import type { RequestHandlers } from './request-handlers.ts';

export interface AppFacts {
  readonly version: string;
  readonly modelVersion: string;
  readonly shell: 'electron' | 'loopback';
}

/** What a window asks of the program itself. Only a window that commands is told of the second screen. */
export function createAppHandlers(
  app: AppFacts,
  runsFolder: string,
): Pick<RequestHandlers, 'app/describe' | 'app/open-second-screen'> {
  return {
    'app/describe': async (_, { mayCommand, secondScreen }) =>
      succeed({
        ...app,
        platform: process.platform,
        runsFolder,
        mayCommand,
        secondScreen: mayCommand && secondScreen ? secondScreen.offer : null,
      }),
    async 'app/open-second-screen'(_, { secondScreen }) {
      if (secondScreen?.open === undefined) {
        return fail({
          kind: 'request-invalid',
          message: 'A second screen is opened by its address.',
        });
      }
      secondScreen.open();
      return succeed({});
    },
  };
}
