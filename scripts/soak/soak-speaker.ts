import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { nextMessage } from '../measuring/next-message.ts';

/** A probe in a process of its own, at the far end of a real pseudo-terminal. */
export interface SoakSpeaker {
  readonly path: string;
  begin(): void;
  /** Lines sent since it began. */
  end(): Promise<number>;
}

export async function startSpeaker(pace: string): Promise<SoakSpeaker> {
  const child = fork(fileURLToPath(new URL('./speak.ts', import.meta.url)), [pace], {
    execArgv: ['--import', 'tsx'],
  });
  const { path } = await nextMessage<{ path: string }>(child);
  return {
    path,
    begin: () => void child.send('begin'),
    async end() {
      const answer = nextMessage<{ sent: number }>(child);
      child.send('end');
      const { sent } = await answer;
      child.kill();
      return sent;
    },
  };
}
