import { networkInterfaces } from 'node:os';
import type { ClassViewDoor } from '#main';
import type { RequestAnswer } from '#shared-core';
import type { WindowFiles } from '../files/index.ts';
import type { ServiceHandler } from '../service-handler.ts';
import { newLessonCode } from './lesson-code.ts';
import { localAddress } from './local-address.ts';
import { type ClassListener, openClassView } from './open-class-view.ts';

type ClassView = RequestAnswer<'class-view/status'>;

export interface ClassViewParts {
  readonly services: ServiceHandler;
  readonly windowFiles: WindowFiles;
  /** This computer in the local network; null without one. */
  readonly findHost?: () => string | null;
}

/** Easily typed, and seldom taken. */
const usualPort = 4870;

/** Shut until somebody opens it; each opening has a code of its own, and the end of a run shuts it. */
export function createClassViewDoor(parts: ClassViewParts): ClassViewDoor {
  const { services, windowFiles, findHost = () => localAddress(networkInterfaces()) } = parts;
  let listener: ClassListener | null = null;
  let opening: Promise<ClassView> | null = null;
  let wasRecording = false;

  const status = (): ClassView =>
    listener === null
      ? { state: 'shut' }
      : { state: 'open', address: listener.address, onlookers: listener.onlookers() };

  async function shut(): Promise<ClassView> {
    await opening;
    const ending = listener;
    listener = null;
    await ending?.close();
    return { state: 'shut' };
  }

  async function openOnce(): Promise<ClassView> {
    const host = findHost();
    if (host === null) return { state: 'impossible', why: 'no-network' };
    listener = await openClassView({
      services,
      windowFiles,
      host,
      usualPort,
      code: newLessonCode(),
      nowMs: () => performance.now(),
    });
    return listener === null ? { state: 'impossible', why: 'not-allowed' } : status();
  }

  services.on('recording', ({ state }) => {
    if (wasRecording && state === 'idle') void shut();
    wasRecording = state !== 'idle';
  });
  return {
    status,
    async open() {
      if (listener !== null) return status();
      opening ??= openOnce().finally(() => {
        opening = null;
      });
      return opening;
    },
    shut,
  };
}
