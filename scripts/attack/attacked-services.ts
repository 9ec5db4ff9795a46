import { fork } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { nextMessage } from '../measuring/next-message.ts';

export interface AttackedPlace {
  readonly port: number;
  readonly viewerUrl: string;
  /** What the class is told: leads a screen in. */
  readonly classAddress: string;
}

export interface AttackedFigures {
  /** The longest for which it worked without a look at anything else [ms of the processor: a busy computer makes it no longer]. */
  readonly longestStallMs: number;
  /** Resident memory at the most, of the services and the processes that they started. */
  readonly mostMb: number;
}

/** What makes a part of them stand still, or go on. */
export type ToldToServices = 'halt-desk' | 'wake-desk' | 'slow-syncs' | 'usual-syncs';

/** Services in a process of their own that record while they are attacked. */
export interface AttackedServices extends AttackedPlace {
  readonly runsFolder: string;
  /** Since the last time asked. */
  figures(): Promise<AttackedFigures>;
  /** Ends the run and the process. */
  stop(): Promise<void>;
  signal(signal: NodeJS.Signals): void;
  tell(what: ToldToServices): void;
}

export async function startAttackedServices(
  folder: string,
  probePath: string,
): Promise<AttackedServices> {
  const program = path.join(import.meta.dirname, 'attacked-program.ts');
  const child = fork(program, [folder, probePath], { execArgv: ['--import', 'tsx'] });
  const place = await nextMessage<AttackedPlace>(child);
  return {
    ...place,
    runsFolder: path.join(folder, 'runs'),
    figures() {
      const answer = nextMessage<AttackedFigures>(child);
      child.send('figures');
      return answer;
    },
    async stop() {
      const ended = once(child, 'exit');
      child.send('stop');
      await ended;
    },
    signal: (signal) => void child.kill(signal),
    tell: (what) => void child.send(what),
  };
}
