import type { z } from 'zod';
import { parseJson, wire } from '#shared-core';

/** The first message of a window, or null when it is anything else. */
export function parseHello(text: string): z.infer<typeof wire.hello> | null {
  return wire.hello.safeParse(parseJson(text)).data ?? null;
}

/** A request, or null when the text is none. */
export function parseRequest(text: string): z.infer<typeof wire.request> | null {
  return wire.request.safeParse(parseJson(text)).data ?? null;
}
