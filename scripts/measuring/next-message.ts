import type { ChildProcess } from 'node:child_process';

/** What a process says next over its channel; one that ends instead fails. */
export function nextMessage<T>(child: ChildProcess): Promise<T> {
  return new Promise((resolve, reject) => {
    const ended = () => reject(new Error('The process has ended.'));
    child.once('exit', ended);
    child.once('message', (message) => {
      child.off('exit', ended);
      resolve(message as T);
    });
  });
}
