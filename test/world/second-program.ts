import type { FileLayer } from '#main';
import type { Bench } from './bench.ts';
import type { Judge } from './judge.ts';
import type { Ask } from './person.ts';
import type { PlantedFault } from './planted-fault.ts';
import { startProgram } from './program.ts';

export interface SecondProgramParts {
  readonly bench: Bench;
  readonly judge: Judge;
  readonly ask: Ask;
  readonly wait: <T>(asked: Promise<T>) => Promise<T | null>;
  readonly settings: unknown;
  readonly runId: string;
  readonly planted: PlantedFault | undefined;
}

/** The program started a second time on the same folder: it may look, and must change nothing. */
export async function runSecondProgram(parts: SecondProgramParts): Promise<void> {
  const { bench, judge, ask, wait, settings, runId, planted } = parts;
  const changes: string[] = [];
  const second = await wait(
    startProgram({
      time: bench.time,
      files: noting(bench.disk.files, (change) => changes.push(change)),
      lines: [],
      planted: undefined,
      holdsFolder: planted === 'lock-ignored' ? () => true : null,
      onReadings: () => {},
      onMonitor: () => {},
      onConcluded: () => {},
    }),
  );
  if (second === null) return;
  const { session } = second;
  await ask('runs/list', {}, undefined, session);
  await ask('runs/read', { runId, fromIndex: 0 }, undefined, session);
  await ask('runs/rename', { runId, name: 'Mine', notes: '' }, undefined, session);
  await ask('runs/trash', { runId }, undefined, session);
  await ask('run/start', { settings }, undefined, session);
  await wait(session.close());
  second.kill();
  if (changes.length > 0) {
    judge.violated('second-program-changes-nothing', changes.slice(0, 3).join(', '));
  }
}

function noting(files: FileLayer, note: (change: string) => void): FileLayer {
  return {
    ...files,
    createAppend(at) {
      note(`made ${at}`);
      return files.createAppend(at);
    },
    openAppend(at) {
      note(`opened ${at}`);
      return files.openAppend(at);
    },
    rename(from, to) {
      note(`renamed ${from}`);
      return files.rename(from, to);
    },
    remove(at) {
      note(`removed ${at}`);
      return files.remove(at);
    },
    truncate(at, length) {
      note(`cut ${at}`);
      return files.truncate(at, length);
    },
  };
}
