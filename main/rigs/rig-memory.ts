import path from 'node:path';
import {
  contractLimits,
  fail,
  type PortInfo,
  type RequestAnswer,
  type Result,
  type ServiceProblem,
  type SetUp,
  succeed,
  worded,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { FileLayer } from '../file-layer/index.ts';
import { createKeptFile } from '../kept-file/index.ts';
import { takeTurns } from '../turns/index.ts';
import { devicesOf, withPathsOfToday } from './devices.ts';
import { type RigsFile, rigsFormat, type StoredRig } from './rigs-file.ts';

type KnownRigs = RequestAnswer<'rigs/list'>;

type Answer = Promise<Result<KnownRigs, ServiceProblem>>;

export const rigsFileName = 'kept-rigs.json';

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
  const kept = createKeptFile(files, path.join(runsFolder, rigsFileName), rigsFormat);
  const inTurn = takeTurns();

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
      const next = await kept.change(changed);
      return next.ok ? told(next.value) : next;
    });
  }

  return {
    list: () =>
      inTurn(async () => {
        const found = await kept.read();
        return found.ok ? told(found.value) : found;
      }),
    async keep(name, setUp) {
      const devices = devicesOf(setUp.source, await ports());
      const now = { keptAtIso: new Date(clock.wallMs()).toISOString(), setUp, devices };
      return change((file) =>
        name === null ? succeed({ ...file, last: now }) : withRig(file, { name, ...now }),
      );
    },
    forget: (name) =>
      change((file) => succeed({ ...file, rigs: file.rigs.filter((rig) => rig.name !== name) })),
    noteRehearsal: () => change((file) => succeed({ ...file, hasRehearsed: true })),
  };
}

function withRig(file: RigsFile, rig: StoredRig): Result<RigsFile, ServiceProblem> {
  const others = file.rigs.filter(({ name }) => name !== rig.name);
  if (others.length >= contractLimits.rigs) {
    const message = worded('{most} rigs are kept already. Take one away first', {
      most: contractLimits.rigs,
    });
    return fail({ kind: 'request-invalid', message });
  }
  return succeed({
    ...file,
    rigs: [...others, rig].sort((a, b) => a.name.localeCompare(b.name)),
  });
}
