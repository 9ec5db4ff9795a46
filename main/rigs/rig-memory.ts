import path from 'node:path';
import {
  fail,
  type KnownRigs,
  mostRigs,
  type PortInfo,
  type Result,
  type ServiceProblem,
  type SetUp,
  succeed,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import { type FileLayer, readText, replaceFile, serviceProblemOf } from '../file-layer/index.ts';
import { takeTurns } from '../turns/index.ts';
import { devicesOf, withPathsOfToday } from './devices.ts';
import {
  noRigs,
  type ReadRigs,
  type RigsFile,
  readRigs,
  rigsText,
  type StoredRig,
} from './rigs-file.ts';

type Answer = Promise<Result<KnownRigs, ServiceProblem>>;

/** The set-ups of earlier lessons. They lie beside the runs, so they are there whatever window or address asks. */
export interface RigMemory {
  list(): Answer;
  /** Under this name, or as the set-up of the last run. */
  keep(name: string | null, setUp: SetUp): Answer;
  forget(name: string): Answer;
  noteRehearsal(): Answer;
}

export interface RigMemorySetup {
  readonly files: FileLayer;
  readonly clock: Clock;
  readonly runsFolder: string;
  readonly mayWrite: () => boolean;
  /** What is plugged in now: a probe may be at another port than in the last lesson. */
  readonly ports: () => Promise<readonly PortInfo[]>;
}

export function createRigMemory(setup: RigMemorySetup): RigMemory {
  const { files, clock, runsFolder, mayWrite, ports } = setup;
  const target = path.join(runsFolder, 'kept-rigs.json');
  const inTurn = takeTurns();

  async function read(): Promise<Result<ReadRigs, ServiceProblem>> {
    const text = await readText(files, target);
    if (text.ok) return succeed(readRigs(text.value));
    if (text.error.kind === 'missing') return succeed({ file: noRigs, isWhole: true });
    return fail(serviceProblemOf(text.error));
  }

  async function told(file: RigsFile): Answer {
    const { last, rigs, hasRehearsed } = file;
    const today = await ports();
    return succeed({
      last: last && { keptAtIso: last.keptAtIso, setUp: withPathsOfToday(last, today) },
      rigs: rigs.map((rig) => {
        const { name, keptAtIso } = rig;
        return { name, keptAtIso, setUp: withPathsOfToday(rig, today) };
      }),
      hasRehearsed,
    });
  }

  function change(changed: (file: RigsFile) => Result<RigsFile, ServiceProblem>): Answer {
    return inTurn(async () => {
      if (!mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
      const found = await read();
      if (!found.ok) return found;
      const { file, isWhole } = found.value;
      const next = changed(file);
      if (!next.ok) return next;
      // What can't be read may be a newer version's, or mended by hand: it is put aside as it is, never written over.
      if (!isWhole) await files.rename(target, `${target}.${clock.wallMs()}.not-understood`);
      const written = await replaceFile(files, target, rigsText(next.value));
      return written.ok ? told(next.value) : fail(serviceProblemOf(written.error));
    });
  }

  return {
    list: () =>
      inTurn(async () => {
        const found = await read();
        return found.ok ? told(found.value.file) : found;
      }),
    async keep(name, setUp) {
      const devices = devicesOf(setUp.source, await ports());
      const kept = { keptAtIso: new Date(clock.wallMs()).toISOString(), setUp, devices };
      return change((file) =>
        name === null ? succeed({ ...file, last: kept }) : withRig(file, { name, ...kept }),
      );
    },
    forget: (name) =>
      change((file) => succeed({ ...file, rigs: file.rigs.filter((rig) => rig.name !== name) })),
    noteRehearsal: () => change((file) => succeed({ ...file, hasRehearsed: true })),
  };
}

function withRig(file: RigsFile, rig: StoredRig): Result<RigsFile, ServiceProblem> {
  const others = file.rigs.filter(({ name }) => name !== rig.name);
  if (others.length >= mostRigs) {
    const message = `${mostRigs} rigs are kept already. Take one away first`;
    return fail({ kind: 'request-invalid', message });
  }
  return succeed({
    ...file,
    rigs: [...others, rig].sort((a, b) => a.name.localeCompare(b.name)),
  });
}
