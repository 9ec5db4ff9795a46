import type { FileLayer } from '#main';
import { type RequestName, usualWarmthBand } from '#shared-core';
import { nothingRead } from '../support/nothing-read.ts';
import type { Asking } from './asking.ts';
import type { Bench } from './bench.ts';
import type { Judge } from './judge.ts';
import type { PlantedFault } from './planted-fault.ts';
import { startProgram } from './program.ts';

export interface SecondProgramParts extends Asking {
  readonly bench: Bench;
  readonly judge: Judge;
  readonly runId: string;
  readonly planted: PlantedFault | undefined;
}

/** The program started a second time on the same folder: it may look, and must change nothing. */
export async function runSecondProgram(parts: SecondProgramParts): Promise<void> {
  const { bench, judge, ask, wait, runId, planted } = parts;
  const { settings } = bench;
  const changes: string[] = [];
  const second = await wait(
    startProgram({
      time: bench.time,
      files: noting(bench.disk.files, (change) => changes.push(change)),
      lines: [],
      planted: undefined,
      holdsFolder: () => planted === 'lock-ignored',
      hasDesk: false,
      isBeginning: () => false,
      onFailedInside: (found) => judge.violated('no-request-fails-inside', found),
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
  for (const [name, body] of orders(runId)) await ask(name, body as never, undefined, session);
  await wait(session.close());
  second.kill();
  if (changes.length > 0) {
    judge.violated('second-program-changes-nothing', changes.slice(0, 3).join(', '));
  }
}

/** What else would change something, whoever's it is. */
function orders(runId: string): readonly (readonly [RequestName, unknown])[] {
  const correction = { reason: 'mine' };
  const mark = { type: 'liquid-mass', liquid: 'residue', massG: 1 };
  const charge = { volumeMl: 300, strengthAbv: 9 };
  const read = { ...nothingRead, atIso: '2025-03-12T09:00:00.000Z', massG: 1 };
  const [fermentId, band, channel] = ['20250312T090000Z', usualWarmthBand, 'ferment'];
  return [
    ['runs/correct', { runId, correction }],
    ['runs/book', { runId, mark }],
    ['runs/restore', { runId }],
    ['rigs/keep', { name: 'Mine', setUp: { name: 'Mine', charge } }],
    ['rigs/forget', { name: 'Lab 1' }],
    ['ferments/enter', { fermentId, read }],
    ['ferments/withdraw', { fermentId, entryId: 1 }],
    ['warmth/keep', { fermentId, band, channel }],
    ['warmth/leave', { fermentId }],
    ['run/continue', { runId }],
  ];
}

function noting(files: FileLayer, note: (change: string) => void): FileLayer {
  return {
    ...files,
    claimFolder(at) {
      note(`claimed ${at}`);
      return files.claimFolder(at);
    },
    async createAppend(at) {
      note(`made ${at}`);
      return await files.createAppend(at);
    },
    async openAppend(at) {
      note(`opened ${at}`);
      return await files.openAppend(at);
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
