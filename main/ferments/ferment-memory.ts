import path from 'node:path';
import {
  checkMoment,
  contractLimits,
  type FermentRead,
  fail,
  type KeptFerment,
  type Result,
  type ServiceProblem,
  type StatedFerment,
  standingEntries,
  succeed,
  worded,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import { type FileLayer, foundOrNone, readText, serviceProblemOf } from '../file-layer/index.ts';
import { takeTurns } from '../turns/index.ts';
import { addLines } from './add-lines.ts';
import { fermentFileNames } from './doubtful-ferments.ts';
import { type FermentLine, fermentLineText, fermentLog, fermentOfText } from './ferment-lines.ts';

type Answer<T> = Promise<Result<T, ServiceProblem>>;

/** The ferments that are written down by hand, each a file of lines beside the runs. Lines are only ever added. */
export interface FermentMemory {
  list(): Answer<readonly KeptFerment[]>;
  /** Null where there is none of that name, or its beginning can't be read. */
  find(fermentId: string): Promise<KeptFerment | null>;
  begin(stated: StatedFerment): Answer<KeptFerment>;
  /** Puts right what was stated of it. */
  correct(fermentId: string, stated: StatedFerment, reason: string): Answer<KeptFerment>;
  enter(fermentId: string, read: FermentRead): Answer<KeptFerment>;
  withdraw(fermentId: string, entryId: number): Answer<KeptFerment>;
}

export interface FermentMemorySetup {
  readonly files: FileLayer;
  readonly clock: Clock;
  readonly runsFolder: string;
  readonly mayWrite: () => boolean;
}

export function createFermentMemory(setup: FermentMemorySetup): FermentMemory {
  const { files, clock, runsFolder, mayWrite } = setup;
  const inTurn = takeTurns();
  const fileOf = (fermentId: string) => path.join(runsFolder, `ferment-${fermentId}.jsonl`);
  const nowIso = () => new Date(clock.wallMs()).toISOString();

  async function read(fermentId: string): Answer<KeptFerment> {
    const file = fileOf(fermentId);
    const text = await foundOrNone(files, file, await readText(files, file));
    if (!text.ok) return fail(serviceProblemOf(text.error));
    if (text.value === null) {
      return refuse(
        worded('This ferment is no longer beside the runs. Its file may have been moved'),
      );
    }
    const ferment = fermentOfText(text.value);
    return ferment === null
      ? refuse(worded('The first line of this ferment cannot be read. Its file is left as it is'))
      : succeed(ferment);
  }

  async function idsOnDisk(): Answer<readonly string[]> {
    const listed = await files.list(runsFolder);
    if (!listed.ok) return fail(serviceProblemOf(listed.error));
    const ids = listed.value.flatMap(({ name }) => fermentFileNames.exec(name)?.[1] ?? []);
    return succeed(ids.sort().reverse());
  }

  /** Adds a line, and tells what is on the disk afterwards. */
  async function add(fermentId: string, line: FermentLine): Answer<KeptFerment> {
    const written = await addLines(files, fileOf(fermentId), {
      text: fermentLineText(line),
      isNew: line.kind === 'begun',
    });
    return written.ok ? read(fermentId) : fail(serviceProblemOf(written.error));
  }

  function change<T>(act: () => Answer<T>): Answer<T> {
    return inTurn(async () =>
      mayWrite() ? act() : fail({ kind: 'folder-in-use', path: runsFolder }),
    );
  }

  return {
    list: () =>
      inTurn(async () => {
        const ids = await idsOnDisk();
        if (!ids.ok) return ids;
        const ferments: KeptFerment[] = [];
        for (const id of ids.value.slice(0, contractLimits.fermentsTold)) {
          // One that can't be read takes no other away.
          const ferment = await read(id);
          if (ferment.ok) ferments.push(ferment.value);
        }
        return succeed(ferments);
      }),
    find: (fermentId) =>
      inTurn(async () => {
        const found = await read(fermentId);
        return found.ok ? found.value : null;
      }),
    begin: (stated) =>
      change(async () => {
        const nowMs = clock.wallMs();
        const moment = checkMoment(stated.beganAtIso, {
          nowMs,
          beganAtIso: null,
          lastKeptIso: null,
        });
        if (!moment.ok) return refuse(moment.error);
        const ids = await idsOnDisk();
        if (!ids.ok) return ids;
        const fermentId = newFermentId(nowMs, new Set(ids.value));
        return add(fermentId, {
          kind: 'begun',
          ...fermentLog,
          keptAtIso: nowIso(),
          fermentId,
          stated,
        });
      }),
    correct: (fermentId, stated, reason) =>
      change(async () => {
        const found = await read(fermentId);
        if (!found.ok) return found;
        const nowMs = clock.wallMs();
        const moment = checkMoment(stated.beganAtIso, {
          nowMs,
          beganAtIso: null,
          lastKeptIso: lastKeptIso(found.value),
        });
        if (!moment.ok) return refuse(moment.error);
        const { beganAtIso } = stated;
        const [oldest] = standingEntries({ ...found.value, stated });
        if (
          oldest &&
          !checkMoment(oldest.entry.read.atIso, { nowMs, beganAtIso, lastKeptIso: null }).ok
        ) {
          return refuse(
            worded(
              'An entry is older than that beginning. Look at the day and the time, or withdraw the entry',
            ),
          );
        }
        return add(fermentId, { kind: 'corrected', keptAtIso: nowIso(), stated, reason });
      }),
    enter: (fermentId, entry) =>
      change(async () => {
        const found = await read(fermentId);
        if (!found.ok) return found;
        const { stated, entries } = found.value;
        const moment = checkMoment(entry.atIso, {
          nowMs: clock.wallMs(),
          beganAtIso: stated.beganAtIso,
          lastKeptIso: lastKeptIso(found.value),
        });
        if (!moment.ok) return refuse(moment.error);
        const entryId = 1 + Math.max(0, ...entries.map((known) => known.entryId));
        return add(fermentId, { kind: 'entry', keptAtIso: nowIso(), entryId, read: entry });
      }),
    withdraw: (fermentId, entryId) =>
      change(async () => {
        const found = await read(fermentId);
        if (!found.ok) return found;
        const entry = found.value.entries.find((known) => known.entryId === entryId);
        if (entry === undefined) return refuse(worded('There is no such entry'));
        // Asked twice, it is withdrawn once.
        if (entry.withdrawnAtIso !== null) return found;
        return add(fermentId, { kind: 'withdrawn', keptAtIso: nowIso(), entryId });
      }),
  };
}

function refuse(message: string): { readonly ok: false; readonly error: ServiceProblem } {
  return fail({ kind: 'request-invalid', message });
}

/** When anything was written down of it last, by the computer's clock then; null before the first entry. */
function lastKeptIso({ corrections, entries }: KeptFerment): string | null {
  const moments = [...corrections, ...entries].map(({ keptAtIso }) => keptAtIso);
  return moments.reduce<string | null>(
    (latest, moment) => (latest === null || moment > latest ? moment : latest),
    null,
  );
}

/** They sort by time: `20250314T101500Z`, or with `-2`, `-3` … when that is taken. */
function newFermentId(wallMs: number, taken: ReadonlySet<string>): string {
  const base = `${new Date(wallMs).toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
  let id = base;
  for (let number = 2; taken.has(id); number += 1) id = `${base}-${number}`;
  return id;
}
