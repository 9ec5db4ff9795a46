import type { FileLayer, Scheduler, Session } from '#main';
import type { EventBody } from '#shared-core';
import type { PlantedFault } from './planted-fault.ts';

export interface HeldParts {
  readonly files: FileLayer;
  readonly timers: Scheduler;
  readonly folder: string;
}

type Told = EventBody<'recording'>;

const spaceEveryS = 2;

/** What a program may do wrong where its disk answers nothing. */
export function plantForHeldDisk(
  session: Session,
  planted: PlantedFault | undefined,
  { files, timers, folder }: HeldParts,
): Session {
  if (planted === 'held-disk-kept-quiet') {
    return withRecordingTold(session, (told) =>
      told.problem?.kind === 'disk-held' ? { ...told, problem: null } : told,
    );
  }
  if (planted === 'held-disk-told-for-ever') {
    let held: Told['problem'] = null;
    return withRecordingTold(session, (told) => {
      if (told.problem?.kind === 'disk-held') held = told.problem;
      return { ...told, problem: told.problem ?? held };
    });
  }
  if (planted === 'space-is-asked-again') {
    timers.every(spaceEveryS, () => void files.freeBytes(folder));
  }
  if (planted !== 'act-looks-at-the-disk') return session;
  return {
    ...session,
    async handle(name, body, asker) {
      if (name === 'run/mark') await files.list(folder);
      return session.handle(name, body, asker);
    },
  };
}

function withRecordingTold(session: Session, asTold: (told: Told) => Told): Session {
  const on: Session['on'] = (name, listener) => {
    if (name !== 'recording') return session.on(name, listener);
    return session.on('recording', (told) => (listener as (told: Told) => void)(asTold(told)));
  };
  return {
    ...session,
    on,
    recordingStatus: () => asTold(session.recordingStatus()),
    async handle(name, body, asker) {
      const answer = await session.handle(name, body, asker);
      const isStatus = name === 'run/status' && answer.ok;
      return isStatus ? { ok: true, value: asTold(answer.value as Told) } : answer;
    },
  };
}
