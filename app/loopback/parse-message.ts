import { type WireHello, type WireRequest, wireHelloSchema, wireRequestSchema } from '#shared-core';

/** The first message of a window, or null when it is anything else. */
export function parseHello(text: string): WireHello | null {
  return wireHelloSchema.safeParse(parseJson(text)).data ?? null;
}

/** A request, or null when the text is none. */
export function parseRequest(text: string): WireRequest | null {
  return wireRequestSchema.safeParse(parseJson(text)).data ?? null;
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
