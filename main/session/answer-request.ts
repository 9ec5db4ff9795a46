import { z } from 'zod';
import {
  fail,
  problemToSend,
  type RequestName,
  type Result,
  requests,
  type ServiceProblem,
} from '#shared-core';
import type { Asker, RequestHandlers } from './request-handlers.ts';

const mostIssuesTold = 3;
const longestMessage = 400;

/** The one place where a request from outside becomes a call: known name, allowed, whole body. */
export async function answerRequest(
  handlers: Partial<RequestHandlers>,
  name: string,
  body: unknown,
  asker: Asker,
): Promise<Result<unknown, ServiceProblem>> {
  if (!isRequestName(name) || handlers[name] === undefined) {
    return fail({
      kind: 'request-invalid',
      message: `There is no request "${name.slice(0, 80)}".`,
    });
  }
  const { commands, body: schema } = requests[name];
  if (commands && !asker.mayCommand) return fail({ kind: 'viewer-may-not-command' });
  const parsed = schema.safeParse(body);
  if (!parsed.success) {
    return fail({ kind: 'request-invalid', message: whatIsWrong(parsed.error) });
  }
  // Name and body belong together: the body was parsed by this name's schema.
  const handler = handlers[name] as (
    body: unknown,
    asker: Asker,
  ) => Promise<Result<unknown, ServiceProblem>>;
  try {
    const answer = await handler(parsed.data, asker);
    return answer.ok ? answer : fail(problemToSend(answer.error));
  } catch (error) {
    console.error(`The request "${name}" failed:`, error);
    const message = error instanceof Error ? error.message : String(error);
    return fail({ kind: 'internal', message: message.slice(0, longestMessage) });
  }
}

/** A body can be wrong in a hundred thousand places; the first few say enough, and cost little to say. */
function whatIsWrong(error: z.ZodError): string {
  const first = new z.ZodError(error.issues.slice(0, mostIssuesTold));
  return z.prettifyError(first).slice(0, longestMessage);
}

function isRequestName(name: string): name is RequestName {
  return Object.hasOwn(requests, name);
}
