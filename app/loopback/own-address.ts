/** The names this computer has for itself on the loopback interface. */
const ownNames = ['127.0.0.1', 'localhost'] as const;

/**
 * Whether a `Host` header names this server. A page elsewhere can make its own name resolve to
 * 127.0.0.1 (DNS rebinding), but the browser then still sends that name here.
 */
export function isOwnHost(host: string | undefined, port: number): boolean {
  return ownNames.some((name) => host === `${name}:${port}`);
}

/** Whether an `Origin` header says that a page of this very server is asking. Absent is not own. */
export function isOwnOrigin(origin: string | undefined, port: number): boolean {
  return ownNames.some((name) => origin === `http://${name}:${port}`);
}
