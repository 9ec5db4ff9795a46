import { assertNever, type ServiceProblem } from '#shared-core';

/** What went wrong and what to do next, in plain words. */
export function problemWords(problem: ServiceProblem): string {
  switch (problem.kind) {
    case 'port-permission-denied':
      return problem.platform === 'linux'
        ? `This account may not open ${problem.path}. In a terminal type: sudo usermod -aG dialout $USER – then log out and in again.`
        : `This account may not open ${problem.path}. Ask the person who looks after this computer.`;
    case 'port-busy':
      return `${problem.path} is in use by another program. Close that program, then choose the port again.`;
    case 'port-not-found':
      return `${problem.path} is not there. Check the plug, or choose another port.`;
    case 'port-failed':
      return `${problem.path} could not be opened (${problem.message}). Unplug the probe, plug it in again and retry.`;
    case 'no-probe':
      return 'No probe is connected. Choose a port or start the rehearsal rig first.';
    case 'already-recording':
      return 'A run is being recorded already. Stop it before starting another.';
    case 'not-recording':
      return 'No run is being recorded. Start one in Prepare.';
    case 'run-not-found':
      return 'This run is no longer in the library. It may have been moved.';
    case 'run-over':
      return 'This run cannot go on any more. It is in the library as far as it was recorded; start a new one in Prepare.';
    case 'run-unreadable':
      return `This run could not be read. ${stopped(problem.message)} The file is left as it is.`;
    case 'disk-full':
      return `There is no room left at ${problem.path}. Free some space; everything saved so far stays.`;
    case 'folder-read-only':
      return `${problem.path} cannot be written to. Choose a folder of your own, or ask who looks after this computer.`;
    case 'folder-unavailable':
      return `${problem.path} cannot be reached (${problem.message}). Check the drive.`;
    case 'folder-in-use':
      return `Another window of this program is using ${problem.path}. Do it there, or close that one first.`;
    case 'kept-by-newer':
      return `A newer version of this program wrote ${problem.path}, and this one leaves it as it is. Use the newer one, or move that file to another folder.`;
    case 'request-invalid':
      return `That could not be done: ${problem.message}.`;
    case 'viewer-may-not-command':
      return 'This window only shows the run. Use the window at the bench.';
    case 'disconnected':
      return 'The connection to the recorder was lost. Nothing was changed; try again once it is back.';
    case 'internal':
      return `Something went wrong inside the program (${problem.message}). What was recorded is kept. Try again; if it stays, start the program anew.`;
    default:
      return assertNever(problem);
  }
}

/** With the full stop that some messages bring and others lack. */
function stopped(message: string): string {
  return message.endsWith('.') ? message : `${message}.`;
}
