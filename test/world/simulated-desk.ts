import type { FileLayer, SideProcess } from '#main';
import { serveDesk } from '../../main/session/desk/serve-desk.ts';
import type { WorldTime } from './world-time.ts';

/** The desk's processes of one program, of which one runs at a time. */
export interface SimulatedDesk {
  readonly start: () => SideProcess;
  /** From outside, at its next look at the disk but so many: in the midst of whatever it does. The next one is started when it is needed. */
  killAfter(looks: number): void;
  /** How often it was: whoever asked it in that moment is told to try once more. */
  kills(): number;
}

export interface SimulatedDeskParts {
  readonly clock: WorldTime['computer']['clock'];
  /** The disk, as long as whoever asks is there. */
  readonly filesOf: (isAlive: () => boolean) => FileLayer;
}

export function createSimulatedDesk({ clock, filesOf }: SimulatedDeskParts): SimulatedDesk {
  let looksLeft = Number.POSITIVE_INFINITY;
  let kills = 0;

  function start(): SideProcess {
    let isAlive = true;
    const heardThere: ((message: unknown) => void)[] = [];
    const heardHere: ((message: unknown) => void)[] = [];
    const exits: (() => void)[] = [];
    const bring = (message: unknown, to: readonly ((message: unknown) => void)[]) => {
      // What crosses a border of processes is a copy.
      const copy = structuredClone(message);
      queueMicrotask(() => {
        if (isAlive) for (const listener of to) listener(copy);
      });
    };
    const exit = () => {
      if (!isAlive) return;
      isAlive = false;
      for (const listener of exits) listener();
    };
    const look = () => {
      if (looksLeft === 0 && isAlive) {
        looksLeft = Number.POSITIVE_INFINITY;
        kills += 1;
        exit();
      }
      looksLeft -= 1;
      return isAlive;
    };
    serveDesk({
      port: {
        post: (message) => bring(message, heardHere),
        on: (listener) => void heardThere.push(listener),
      },
      clock,
      files: filesOf(look),
      exit,
    });
    return {
      processId: null,
      post: (message) => bring(message, heardThere),
      on: (listener) => void heardHere.push(listener),
      onExit: (listener) => void exits.push(listener),
      kill: exit,
    };
  }

  return {
    start,
    killAfter(looks) {
      looksLeft = looks;
    },
    kills: () => kills,
  };
}
