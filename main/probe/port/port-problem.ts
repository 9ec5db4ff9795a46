import type { ServiceProblem } from '#shared-core';

type PortProblemKind = 'port-permission-denied' | 'port-busy' | 'port-not-found';

/**
 * What operating systems say when a port does not open, as this project's serial library passes it
 * on. First match wins: Windows says "Access denied" for a port another program holds, POSIX systems
 * say "Permission denied" when the account lacks the right.
 */
const sayings: readonly (readonly [RegExp, PortProblemKind])[] = [
  [/permission denied|EACCES|EPERM|operation not permitted/i, 'port-permission-denied'],
  [
    /cannot lock port|access (is )?denied|resource busy|EBUSY|device or resource busy/i,
    'port-busy',
  ],
  [/resource temporarily unavailable|EAGAIN|sharing violation/i, 'port-busy'],
  [
    /no such file or directory|ENOENT|file not found|no such device|ENXIO|ENODEV|device not configured/i,
    'port-not-found',
  ],
];

/** The typed problem behind a message of the operating system about opening or using `path`. */
export function portProblem(path: string, message: string, platform: string): ServiceProblem {
  const kind = sayings.find(([saying]) => saying.test(message))?.[1];
  switch (kind) {
    case 'port-permission-denied':
      return { kind, path, platform };
    case 'port-busy':
    case 'port-not-found':
      return { kind, path };
    case undefined:
      return { kind: 'port-failed', path, message };
  }
}
