import type { FileLayer, ProbeHub, ProbeReading, Session } from '#main';
import { type EventBody, fail, type Snapshot } from '#shared-core';
import { type Bench, stepS } from './bench.ts';
import type { PlantedFault } from './planted-fault.ts';
import type { SimulatedDesk } from './simulated-desk.ts';

type Planted = PlantedFault | undefined;

/** A log file that says it is synced when it is not, or that forgets one record. */
export function plantInFiles(bench: Bench, planted: Planted): FileLayer {
  const { files } = bench.disk;
  if (planted === 'write-is-waited-for') return waitingForWrites(bench);
  if (planted === 'deletion-goes-unseen') return neverMissingALog(files);
  if (planted === 'minutes-not-written') return withoutMinutes(files);
  if (planted === 'labels-not-synced') return withoutSync(files, 'labels.jsonl.part');
  if (planted !== 'sync-lies' && planted !== 'sync-of-half' && planted !== 'record-left-out')
    return files;
  const createAppend: FileLayer['createAppend'] = async (at) => {
    const made = await files.createAppend(at);
    if (!made.ok || !at.endsWith('.jsonl')) return made;
    let syncs = 0;
    let writes = 0;
    const sync = async () => {
      syncs += 1;
      const lies = planted === 'sync-lies' ? syncs > 3 : syncs % 2 === 0 || syncs > 200;
      return lies && planted !== 'record-left-out'
        ? { ok: true as const, value: undefined }
        : made.value.sync();
    };
    const write = (bytes: Uint8Array) => {
      writes += 1;
      return planted === 'record-left-out' && writes === 50
        ? { ok: true as const, value: bytes.length }
        : made.value.write(bytes);
    };
    return { ok: true, value: { ...made.value, sync, write } };
  };
  return { ...files, createAppend };
}

/** Whoever looks for a file of a log is told that it is there. */
function neverMissingALog(files: FileLayer): FileLayer {
  return {
    ...files,
    async sizeBytes(at) {
      const found = await files.sizeBytes(at);
      const isGone = at.endsWith('.jsonl') && !found.ok && found.error.kind === 'missing';
      return isGone ? { ok: true, value: Number.MAX_SAFE_INTEGER } : found;
    },
  };
}

/** All that the program does stands still until the disk has taken what it wrote. */
function waitingForWrites({ disk, hold, time }: Bench): FileLayer {
  const { computer, bench } = time;
  function stand(): void {
    computer.halt();
    const stop = bench.every(stepS, () => {
      if (hold.heldSinceS() !== null) return;
      stop();
      computer.goOn();
    });
  }
  return {
    ...disk.files,
    async createAppend(at) {
      const made = await disk.files.createAppend(at);
      if (!made.ok) return made;
      return {
        ok: true,
        value: {
          ...made.value,
          write(bytes) {
            if (hold.heldSinceS() !== null && computer.isRunning()) stand();
            return made.value.write(bytes);
          },
        },
      };
    },
  };
}

/** Minutes of a ferment are said to be written, and are not. */
function withoutMinutes(files: FileLayer): FileLayer {
  const isOfWarmth = (at: string) => at.includes('/warmth-') && !at.includes('.minute.');
  return {
    ...files,
    async openAppend(at) {
      const made = await files.openAppend(at);
      if (!made.ok || !isOfWarmth(at)) return made;
      return {
        ok: true,
        value: { ...made.value, write: (bytes) => ({ ok: true, value: bytes.length }) },
      };
    },
  };
}

/** Files of that name say that they are synced, and are not. */
function withoutSync(files: FileLayer, name: string): FileLayer {
  const lying = (made: Awaited<ReturnType<FileLayer['openAppend']>>, at: string): typeof made =>
    made.ok && at.endsWith(name)
      ? { ok: true, value: { ...made.value, sync: async () => ({ ok: true, value: undefined }) } }
      : made;
  return {
    ...files,
    createAppend: async (at) => lying(await files.createAppend(at), at),
    openAppend: async (at) => lying(await files.openAppend(at), at),
  };
}

export function plantInHub(hub: ProbeHub, planted: Planted): ProbeHub {
  if (planted === 'line-kept-whole') {
    let kept = '';
    hub.on('readings', (readings) => {
      kept += JSON.stringify(readings);
    });
    return { ...hub, status: () => ({ ...hub.status(), lastLine: kept }) };
  }
  if (planted === 'probe-not-given-back' || planted === 'still-not-let-go') {
    return afterRehearsal(hub, planted);
  }
  if (planted !== 'reading-lost' && planted !== 'reading-doubled') return hub;
  const on: ProbeHub['on'] = (name, listener) => {
    if (name !== 'readings') return hub.on(name, listener);
    // Whoever listens misses the same.
    let count = 0;
    const told = listener as (readings: readonly ProbeReading[]) => void;
    return hub.on('readings', (readings) => {
      count += 1;
      if (count !== 100) told(readings);
      else if (planted === 'reading-doubled') told([...readings, ...readings]);
    });
  };
  return { ...hub, on };
}

/** The simulated still stays where it is, or nothing is connected behind it. */
function afterRehearsal(hub: ProbeHub, planted: PlantedFault): ProbeHub {
  let wasStill = false;
  const isStill = () => hub.status().source?.kind === 'demo';
  return {
    ...hub,
    async connect(source) {
      if (wasStill && planted === 'probe-not-given-back') return fail({ kind: 'no-probe' });
      wasStill ||= source.kind === 'demo';
      return hub.connect(source);
    },
    async disconnect() {
      if (planted !== 'still-not-let-go' || !isStill()) await hub.disconnect();
    },
  };
}

/** What the monitor says, made false; parts of a snapshot are made when they are read, so it is copied whole. */
export function plantInSnapshot(snapshot: Snapshot, planted: Planted): Snapshot {
  if (planted !== 'alarm-withheld' && planted !== 'age-stands-still') return snapshot;
  const copy: Snapshot = JSON.parse(JSON.stringify(snapshot));
  if (planted === 'alarm-withheld') return { ...copy, alarms: [] };
  return copy.head === null ? copy : { ...copy, head: { ...copy.head, ageS: 0 } };
}

export function plantInSession(session: Session, planted: Planted): Session {
  if (planted === 'mark-not-kept') {
    const answer = { ok: true as const, value: { markId: 999, timeS: 1 } };
    return {
      ...session,
      handle: async (name, body, asker) =>
        name === 'run/mark' && asker.mayCommand ? answer : session.handle(name, body, asker),
    };
  }
  if (
    planted === 'set-up-not-written' ||
    planted === 'table-lacks-a-row' ||
    planted === 'piece-goes-missing'
  ) {
    return { ...session, handle: answeredFalsely(session, planted) };
  }
  if (planted === 'lost-folder-kept-quiet') {
    const recordingStatus: Session['recordingStatus'] = () => {
      const status = session.recordingStatus();
      return status.state === 'failed' ? { ...status, state: 'recording', problem: null } : status;
    };
    return { ...session, recordingStatus };
  }
  if (planted === 'ended-run-kept-quiet') {
    const recordingStatus: Session['recordingStatus'] = () => {
      const { notSaved: _, ...status } = session.recordingStatus();
      return status;
    };
    return { ...session, recordingStatus };
  }
  if (planted === 'window-reads-the-disk') {
    return {
      ...session,
      handle: async (name, body, asker) =>
        name === 'runs/read' && session.recordingStatus().state === 'failed'
          ? { ok: false, error: { kind: 'folder-unavailable', path: '', message: 'planted' } }
          : session.handle(name, body, asker),
    };
  }
  if (planted === 'receiver-runs-empty') {
    let shownMl = 100;
    return {
      ...session,
      async handle(name, body, asker) {
        const answer = await session.handle(name, body, asker);
        if (name !== 'probe/status' || !answer.ok) return answer;
        shownMl -= 1;
        return { ok: true, value: { ...(answer.value as object), rehearsedReceiverMl: shownMl } };
      },
    };
  }
  if (planted === 'handler-throws') {
    return {
      ...session,
      handle: async (name, body, asker) =>
        name === 'runs/correct'
          ? { ok: false, error: { kind: 'internal', message: 'planted' } }
          : session.handle(name, body, asker),
    };
  }
  if (planted !== 'told-before-it-happened') return session;
  const on: Session['on'] = (name, listener) => {
    if (name !== 'inputs') return session.on(name, listener);
    let told = 0;
    return session.on('inputs', (body: EventBody<'inputs'>) => {
      told += 1;
      const inputs = body.inputs.map((input) => ({ ...input, timeS: input.timeS + 0.001 }));
      (listener as (body: EventBody<'inputs'>) => void)(told === 30 ? { ...body, inputs } : body);
    });
  };
  return { ...session, on };
}

/** A set-up that is said to be kept and is not; a table that is given out with its twentieth row left empty, and a pack without its last bytes. */
function answeredFalsely(session: Session, planted: PlantedFault): Session['handle'] {
  return async (name, body, asker) => {
    if (planted === 'set-up-not-written' && name === 'rigs/keep') {
      return session.handle('rigs/list', {}, asker);
    }
    const answer = await session.handle(name, body, asker);
    if (planted === 'piece-goes-missing' && name === 'packs/read' && answer.ok) {
      return { ok: true, value: { base64: '', nextByte: null } };
    }
    if (planted !== 'table-lacks-a-row' || name !== 'packs/read' || !answer.ok) return answer;
    const piece = answer.value as { readonly base64: string };
    const rows = Buffer.from(piece.base64, 'base64').toString('utf8').split('\n');
    const text = rows.map((row, index) => (index === 20 ? ' '.repeat(row.length) : row)).join('\n');
    return { ok: true, value: { ...piece, base64: Buffer.from(text).toString('base64') } };
  };
}

/** After one that was killed the next answers nothing. */
export function plantInDesk(desk: SimulatedDesk, planted: Planted): SimulatedDesk['start'] {
  return () => {
    const started = desk.start();
    const isDead = planted === 'desk-stays-dead' && desk.kills() > 0;
    return isDead ? { ...started, post: () => undefined } : started;
  };
}

/** One window that is told less than the others. */
export function plantInWindow(session: Session, planted: Planted): Session {
  if (planted !== 'window-goes-deaf' && planted !== 'input-kept-from-windows') return session;
  const deafTo = planted === 'window-goes-deaf' ? 'snapshot' : 'inputs';
  const on: Session['on'] = (name, listener) => {
    if (name !== deafTo) return session.on(name, listener);
    let told = 0;
    return session.on(name, (body) => {
      told += 1;
      if (told < 60) listener(body);
    });
  };
  return { ...session, on };
}

export async function turnByte(files: FileLayer, folder: string): Promise<void> {
  const listed = await files.list(folder);
  const log = listed.ok && listed.value.find(({ name }) => name.startsWith('run'));
  if (!log) return;
  const at = `${folder}/${log.name}`;
  const size = await files.sizeBytes(at);
  const read = await files.read(at, 0, size.ok ? size.value : 0);
  if (!read.ok) return;
  const bytes = Uint8Array.from(read.value);
  const middle = Math.floor(bytes.length / 2);
  bytes[middle] = (bytes[middle] ?? 0) ^ 1;
  await files.remove(at);
  const made = await files.createAppend(at);
  if (made.ok) made.value.write(bytes);
}
