import type { Session } from '#main';
import type { EventBody, Snapshot } from '#shared-core';

/** What a window has been told, as far as the world judges it. */
export interface SimulatedWindow {
  connectedSinceS: number | null;
  snapshot: Snapshot | null;
  savedToS: number;
  readonly inputs: EventBody<'inputs'>['inputs'];
  open(): void;
  close(): void;
}

export function createSimulatedWindow(
  session: Session,
  nowS: () => number,
  trace: (text: string) => void,
): SimulatedWindow {
  let stops: (() => void)[] = [];
  const window: SimulatedWindow = {
    connectedSinceS: null,
    snapshot: null,
    savedToS: 0,
    inputs: [],
    open() {
      window.connectedSinceS = nowS();
      stops = [
        session.on('snapshot', ({ snapshot }) => {
          window.snapshot = snapshot;
          trace(`${nowS()} snapshot ${JSON.stringify(snapshot)}`);
        }),
        session.on('inputs', ({ inputs }) => {
          window.inputs.push(...inputs);
          trace(`${nowS()} inputs ${JSON.stringify(inputs)}`);
        }),
        session.on('recording', (status) => {
          window.savedToS = status.savedToS ?? window.savedToS;
          trace(`${nowS()} recording ${JSON.stringify(status)}`);
        }),
      ];
    },
    close() {
      for (const stop of stops) stop();
      stops = [];
      window.connectedSinceS = null;
      window.snapshot = null;
    },
  };
  return window;
}
