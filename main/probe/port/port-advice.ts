import type { ServiceProblem } from '#shared-core';

/** One plain sentence on what to do about a port that does not open; null for other problems. */
export function portAdvice(problem: ServiceProblem): string | null {
  switch (problem.kind) {
    case 'port-permission-denied':
      return problem.platform === 'linux'
        ? `This account may not open ${problem.path}. In a terminal: sudo usermod -aG dialout "$USER" (on Arch: uucp instead of dialout), then log out and in again.`
        : `This account may not open ${problem.path}. Ask whoever looks after this computer for access to serial ports.`;
    case 'port-busy':
      return `Another program is using ${problem.path}. Close it there (a serial monitor, perhaps), then connect again.`;
    case 'port-not-found':
      return `${problem.path} is not there. Is the plug in? Unplug it, count to five, plug it in again.${macOsHint(problem.path)}`;
    case 'port-failed':
      return `${problem.path} could not be used: ${problem.message}`;
    default:
      return null;
  }
}

/** On macOS the `tty.` name waits for a modem's carrier; the `cu.` name of the same plug does not. */
function macOsHint(path: string): string {
  return path.startsWith('/dev/tty.') ? ` Or try ${path.replace('/dev/tty.', '/dev/cu.')}.` : '';
}
