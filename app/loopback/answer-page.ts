import type { IncomingMessage, ServerResponse } from 'node:http';
import { assertNever } from '#shared-core';
import { securityHeaders, type WindowFileProblem, type WindowFiles } from '../files/index.ts';

export interface PageDeps {
  readonly windowFiles: WindowFiles;
  /** Whether a `Host` header names this server. */
  readonly isOwnHost: (host: string | undefined) => boolean;
}

/** Answers a page request: files of the built window, by GET, to this server's own name only. */
export async function answerPage(
  request: IncomingMessage,
  response: ServerResponse,
  { windowFiles, isOwnHost }: PageDeps,
): Promise<void> {
  const { host } = request.headers;
  const refuse = (status: number, sentence: string) => {
    response.writeHead(status, {
      ...securityHeaders(null),
      'Content-Type': 'text/plain; charset=utf-8',
    });
    response.end(`${sentence}\n`);
  };
  if (!isOwnHost(host)) return refuse(421, 'This address is not served here.');
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refuse(405, 'Only pages can be asked for here.');
  }
  const found = await windowFiles.read(addressPath(request.url ?? '/'));
  if (!found.ok) return refuse(statusOf(found.error), 'There is no such page here.');
  response.writeHead(200, {
    ...securityHeaders(`ws://${host}`),
    'Content-Type': found.value.mediaType,
    'Content-Length': found.value.content.length,
  });
  response.end(request.method === 'HEAD' ? undefined : found.value.content);
}

/** The raw path: `URL` would resolve `..` before we could refuse it. */
function addressPath(target: string): string {
  return target.split(/[?#]/, 1)[0] ?? '/';
}

function statusOf(problem: WindowFileProblem): number {
  switch (problem.kind) {
    case 'malformed-address':
      return 400;
    case 'outside-folder':
      return 403;
    case 'no-such-file':
      return 404;
    default:
      return assertNever(problem);
  }
}
