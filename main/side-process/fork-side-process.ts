import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { SideProcess } from './side-process.ts';

/** Starts a process as a child of this one, from source or from a built file. */
export function forkSideProcess(entry: URL): SideProcess {
  const path = fileURLToPath(entry);
  const child = fork(path, {
    execArgv: path.endsWith('.ts') ? ['--import', import.meta.resolve('tsx')] : [],
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  });
  // An unheard 'error' would end this process, and failing alone is the point of that one.
  child.on('error', () => {});
  return {
    processId: child.pid ?? null,
    post(message) {
      if (child.connected) child.send(message as object, () => {});
    },
    on: (listener) => child.on('message', listener),
    onExit: (listener) => child.once('exit', listener),
    kill: () => child.kill('SIGKILL'),
  };
}
