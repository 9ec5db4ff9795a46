import type { ServiceProblem } from '#shared-core';
import { asGiven, worded } from '#shared-core';

/** One plain sentence on what to do about a port that does not open; null for other problems. */
export function portAdvice(problem: ServiceProblem): string | null {
  switch (problem.kind) {
    case 'port-permission-denied':
      return problem.platform === 'linux'
        ? worded(
            'This account may not open {path}. In a terminal: sudo usermod -aG dialout "$USER" (on Arch: uucp instead of dialout), then log out and in again.',
            { path: asGiven(problem.path) },
          )
        : worded(
            'This account may not open {path}. Ask whoever looks after this computer for access to serial ports.',
            { path: asGiven(problem.path) },
          );
    case 'port-busy':
      return worded(
        'Another program is using {path}. Close it there (a serial monitor, perhaps), then connect again.',
        { path: asGiven(problem.path) },
      );
    case 'port-not-found':
      return worded(
        '{path} is not there. Is the plug in? Unplug it, count to five, plug it in again.{hint}',
        { path: asGiven(problem.path), hint: macOsHint(problem.path) },
      );
    case 'port-failed':
      return worded('{path} could not be used: {message}', {
        path: asGiven(problem.path),
        message: asGiven(problem.message),
      });
    default:
      return null;
  }
}

/** On macOS the `tty.` name waits for a modem's carrier; the `cu.` name of the same plug does not. */
function macOsHint(path: string): string {
  return path.startsWith('/dev/tty.')
    ? worded(' Or try {other}.', { other: asGiven(path.replace('/dev/tty.', '/dev/cu.')) })
    : '';
}
