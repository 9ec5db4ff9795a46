import type { Session } from '#main';
import type { FaultKind } from './fault.ts';
import { plantInWindow } from './plant.ts';
import type { PlantedFault } from './planted-fault.ts';
import { createSimulatedWindow, type SimulatedWindow } from './simulated-window.ts';
import type { WorldTime } from './world-time.ts';

export interface WindowRowParts {
  readonly time: WorldTime;
  readonly isOn: (kind: FaultKind) => boolean;
  readonly planted: PlantedFault | undefined;
}

/** The teacher's window and two that look on; what happens to each of them is its own. */
export interface WindowRow {
  readonly all: readonly SimulatedWindow[];
  open(session: Session): void;
  close(): void;
  /** Opens and closes them as the world has it. */
  step(session: Session): void;
}

const slowS = 0.8;

export function createWindowRow({ time, isOn, planted }: WindowRowParts): WindowRow {
  const all = [0, 1, 2].map((index) =>
    createSimulatedWindow({
      time,
      mayCommand: index === 0,
      delayS: () => (index === 1 && isOn('window-is-slow') ? slowS : 0),
      asTold: (session) => (index === 1 ? plantInWindow(session, planted) : session),
    }),
  );
  const [first, second, third] = all;
  return {
    all,
    open(session) {
      for (const window of all) window.open(session);
    },
    close() {
      for (const window of all) window.close();
    },
    step(session) {
      const vanished = isOn('windows-vanish');
      if (vanished || isOn('window-reloads')) first?.close();
      else first?.open(session);
      if (isOn('socket-breaks')) second?.breakOff();
      else second?.open(session);
      if (vanished) third?.close();
      else third?.open(session);
    },
  };
}
