import { securityHeaders, type WindowFileProblem, type WindowFiles } from '../files/index.ts';
import { appHost, appScheme, isAppAddress } from './app-address.ts';

/** Answers an `app://` request with a file of the built window, or with a refusal. */
export async function answerAppRequest(
  request: { readonly url: string; readonly method: string },
  windowFiles: WindowFiles,
): Promise<Response> {
  if (!isAppAddress(request.url)) return refusal(403);
  if (request.method !== 'GET') return refusal(405);
  const found = await windowFiles.read(rawPath(request.url));
  if (!found.ok) return refusal(statuses[found.error.kind]);
  return new Response(found.value.content, {
    headers: { ...securityHeaders(null), 'Content-Type': found.value.mediaType },
  });
}

const statuses: Readonly<Record<WindowFileProblem['kind'], number>> = {
  'malformed-address': 400,
  'outside-folder': 403,
  'no-such-file': 404,
};

/** The path as it was written: `URL.pathname` would have resolved `..` already. */
function rawPath(address: string): string {
  const afterHost = address.slice(`${appScheme}://${appHost}`.length);
  return afterHost.split(/[?#]/, 1)[0] || '/';
}

function refusal(status: number): Response {
  return new Response(null, { status, headers: securityHeaders(null) });
}
