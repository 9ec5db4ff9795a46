/**
 * What the window's page may load: its own files and nothing else. `socketOrigin` is the loopback
 * shell's own socket; the Electron shell has none and passes null.
 *
 * Written after the Electron security checklist (item 7) and MDN's description of the directives.
 */
export function contentSecurityPolicy(socketOrigin: string | null): string {
  return [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self' data:",
    "font-src 'self'",
    `connect-src ${socketOrigin ?? "'none'"}`,
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');
}

/** Headers on every answer of either shell, refusals included. */
export function securityHeaders(socketOrigin: string | null): Readonly<Record<string, string>> {
  return {
    'Content-Security-Policy': contentSecurityPolicy(socketOrigin),
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
    'X-Frame-Options': 'DENY',
    'Cache-Control': 'no-store',
  };
}
