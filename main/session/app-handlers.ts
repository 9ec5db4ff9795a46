import process from 'node:process';
import { fail, succeed, worded } from '#shared-core';
import type { ClassView, RequestHandlers } from './request-handlers.ts';

type AppRequest = Extract<keyof RequestHandlers, `app/${string}` | `class-view/${string}`>;

/** Where the shell has no way to a local network. */
const noClassView: ClassView = { state: 'impossible', why: 'no-network' };

export interface AppFacts {
  readonly version: string;
  readonly modelVersion: string;
  readonly shell: 'electron' | 'loopback';
}

/** What a window asks of the program itself. Only a window that commands is told of the second screen. */
export function createAppHandlers(
  app: AppFacts,
  runsFolder: string,
): Pick<RequestHandlers, AppRequest> {
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
          message: worded('a second screen is opened by its address'),
        });
      }
      secondScreen.open();
      return succeed({});
    },
    'class-view/status': async (_, { secondScreen }) =>
      succeed(secondScreen?.classView?.status() ?? noClassView),
    'class-view/open': async (_, { secondScreen }) =>
      succeed((await secondScreen?.classView?.open()) ?? noClassView),
    'class-view/shut': async (_, { secondScreen }) =>
      succeed((await secondScreen?.classView?.shut()) ?? noClassView),
  };
}
