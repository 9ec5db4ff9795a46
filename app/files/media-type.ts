import path from 'node:path';

/** The kinds of file a built window holds. Anything else is handed out as bytes, never as a page. */
const mediaTypes: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

export function mediaType(file: string): string {
  return mediaTypes[path.extname(file).toLowerCase()] ?? 'application/octet-stream';
}
