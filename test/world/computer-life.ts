import type { FileLayer } from '#main';
import type { Random } from '../../shared-core/random/create-random.ts';
import type { Bench } from './bench.ts';
import type { FaultKind } from './fault.ts';
import type { Program } from './program.ts';

/** What keeps programs from running, the worst first. */
const stops = [
  'power-cut',
  'program-killed',
  'computer-sleeps',
  'computer-sleeps-untold',
  'program-stands-still',
] as const satisfies readonly FaultKind[];

type Stop = (typeof stops)[number];

export interface LifeParts {
  readonly bench: Bench;
  readonly random: Random;
  readonly program: () => Program | null;
  /** The program is gone with its windows; what is on the disk now is all there is. */
  readonly ended: (how: 'power-cut' | 'program-killed') => Promise<void>;
  readonly start: () => Promise<void>;
  readonly wait: <T>(asked: Promise<T>) => Promise<T | null>;
}

/** The computer through its sleeps, halts and ends. */
export interface ComputerLife {
  /** Since when program and computer have had their turns [s]; null while they have none. */
  runningSinceS(): number | null;
  step(): Promise<void>;
}

export function createComputerLife(parts: LifeParts): ComputerLife {
  const { bench, random, program, wait } = parts;
  const { time, isOn, disk } = bench;
  const { computer } = time;
  let stopped: Stop | null = null;
  let runningSinceS: number | null = time.nowS();

  async function stop(how: Stop): Promise<void> {
    stopped = how;
    if (how === 'computer-sleeps') await wait(program()?.session.suspend() ?? Promise.resolve());
    runningSinceS = null;
    if (how === 'program-stands-still') computer.halt();
    else if (how === 'computer-sleeps' || how === 'computer-sleeps-untold') computer.sleep();
    else await end(how);
  }

  async function end(how: 'power-cut' | 'program-killed'): Promise<void> {
    program()?.kill();
    if (how === 'power-cut') {
      disk.cutPower(random.fork(`power ${time.nowS()}`));
      computer.switchOff();
    }
    await parts.ended(how);
  }

  async function goOn(from: Stop): Promise<void> {
    stopped = null;
    if (from === 'power-cut') computer.switchOn();
    if (from === 'power-cut' || from === 'program-killed') await parts.start();
    else computer.goOn();
    if (from === 'computer-sleeps') await wait(program()?.session.resume() ?? Promise.resolve());
    runningSinceS = time.nowS();
  }

  return {
    runningSinceS: () => runningSinceS,
    async step() {
      const wanted = stops.find(isOn) ?? null;
      if (wanted === stopped) return;
      // One thing after the other: a computer that sleeps wakes before its power is cut.
      if (stopped !== null) await goOn(stopped);
      else if (wanted !== null) await stop(wanted);
    },
  };
}

/** What another program leaves in the folder, and takes away. */
export async function litter(files: FileLayer, folder: string, runId: string): Promise<void> {
  const strange = [
    'desktop.ini',
    'New folder/list.txt',
    `${runId}/~run.tmp`,
    `${runId}/run-x.jsonl`,
  ];
  for (const name of strange) {
    const made = await files.createAppend(`${folder}/${name}`);
    if (made.ok) made.value.write(new TextEncoder().encode('{"of":"another program"}\n'));
  }
  await files.remove(`${folder}/${runId}/summary.json`);
}
