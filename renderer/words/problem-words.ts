import { assertNever, type ServiceProblem, say, told } from '#shared-core';

/** What went wrong and what to do next, in plain words. */
export function problemWords(problem: ServiceProblem): string {
  switch (problem.kind) {
    case 'port-permission-denied':
      return problem.platform === 'linux'
        ? say(
            'This account may not open {path}. In a terminal type: sudo usermod -aG dialout $USER – then log out and in again.',
            { path: problem.path },
          )
        : say('This account may not open {path}. Ask the person who looks after this computer.', {
            path: problem.path,
          });
    case 'port-busy':
      return say(
        '{path} is in use by another program. Close that program, then choose the port again.',
        { path: problem.path },
      );
    case 'port-not-found':
      return say('{path} is not there. Check the plug, or choose another port.', {
        path: problem.path,
      });
    case 'port-failed':
      return say(
        '{path} could not be opened ({message}). Unplug the probe, plug it in again and retry.',
        { path: problem.path, message: problem.message },
      );
    case 'no-probe':
      return say('No probe is connected. Choose a port or start the rehearsal rig first.');
    case 'already-recording':
      return say('A run is being recorded already. Stop it before starting another.');
    case 'not-recording':
      return say('No run is being recorded. Start one in Prepare.');
    case 'run-not-found':
      return say('This run is no longer in the library. It may have been moved.');
    case 'run-over':
      return say(
        'This run cannot go on any more. It is in the library as far as it was recorded; start a new one in Prepare.',
      );
    case 'run-not-saved':
      return say(
        'This run is not saved yet, and is not changed before it is. What is to be done for that stands above.',
      );
    case 'run-unreadable':
      return say('This run could not be read. {stopped} The file is left as it is.', {
        stopped: stopped(told(problem.message)),
      });
    case 'disk-full':
      return say(
        'There is no room left at {path}. Free some space; everything saved so far stays.',
        { path: problem.path },
      );
    case 'disk-held':
      return say(
        'The disk does not answer ({path}): what was heard last is only in memory so far. A virus scanner, or a drive that sleeps, may hold it. Leave the program open; it is saved as soon as the disk takes it.',
        { path: problem.path },
      );
    case 'folder-read-only':
      return say(
        '{path} cannot be written to. Choose a folder of your own, or ask who looks after this computer.',
        { path: problem.path },
      );
    case 'folder-unavailable':
      return say('{path} cannot be reached ({message}). Check the drive.', {
        path: problem.path,
        message: problem.message,
      });
    case 'folder-gone':
      return say(
        'The folder {path} is gone. Put it back, plug its drive in again, or make it anew.',
        { path: problem.path },
      );
    case 'folder-in-use':
      return say(
        'Another window of this program is using {path}. Do it there, or close that one first.',
        { path: problem.path },
      );
    case 'kept-by-newer':
      return say(
        'A newer version of this program wrote {path}, and this one leaves it as it is. Use the newer one, or move that file to another folder.',
        { path: problem.path },
      );
    case 'request-invalid':
      // A sentence stands within one that ends it.
      return say('That could not be done: {message}.', {
        message: told(problem.message).replace(/\.$/, ''),
      });
    case 'viewer-may-not-command':
      return say('This window only shows the run. Use the window at the bench.');
    case 'disconnected':
      return say(
        'The connection to the recorder was lost. Nothing was changed; try again once it is back.',
      );
    case 'unanswered':
      return say(
        'The connection to the recorder was lost before it answered. It may have been done all the same: look once it is back, before you do it again.',
      );
    case 'superseded':
      return say(
        'This was given up: something else was asked of the probe meanwhile, and that holds.',
      );
    case 'file-incomplete':
      return say('The file was saved. {message}', { message: told(problem.message) });
    case 'internal':
      return say(
        'Something went wrong inside the program ({message}). What was recorded is kept. Try again; if it stays, start the program anew.',
        { message: told(problem.message) },
      );
    default:
      return assertNever(problem);
  }
}

/** With the full stop that some messages bring and others lack. */
function stopped(message: string): string {
  return message.endsWith('.') ? message : `${message}.`;
}
