import type { IncomingMessage, ServerResponse } from 'node:http';
import { securityHeaders } from '../files/index.ts';
import { isOwnHost } from './own-address.ts';
import { windowLimits } from './window-limits.ts';

/** Where the door file sends its key. */
export const doorPath = '/new-window';

export interface AnswerDoorDeps {
  readonly port: number;
  readonly isDoorKey: (key: string) => boolean;
  readonly issueUrl: () => string;
}

/** Leads whoever shows the door file's key to a fresh address: a closed window is opened anew, and the run goes on. */
export async function answerDoor(
  request: IncomingMessage,
  response: ServerResponse,
  { port, isDoorKey, issueUrl }: AnswerDoorDeps,
): Promise<void> {
  const key = isOwnHost(request.headers.host, port) ? await keyFrom(request) : null;
  if (key !== null && isDoorKey(key)) {
    response.writeHead(303, { ...securityHeaders(null), Location: issueUrl() });
    response.end();
    return;
  }
  response.writeHead(403, {
    ...securityHeaders(null),
    'Content-Type': 'text/plain; charset=utf-8',
    Connection: 'close',
  });
  response.end(
    'This page belongs to an earlier start of the program. Open open-window.html in the folder of runs again.\n',
  );
}

/** The key of a form's body; null for what is longer than any such form, or breaks off. */
async function keyFrom(request: IncomingMessage): Promise<string | null> {
  let body = '';
  try {
    for await (const part of request.setEncoding('latin1')) {
      body += part;
      if (body.length > windowLimits.helloBytes) return null;
    }
  } catch {
    return null;
  }
  return new URLSearchParams(body).get('key');
}
