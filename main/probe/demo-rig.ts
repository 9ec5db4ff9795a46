import {
  asGiven,
  fail,
  type Mark,
  type ProbeSource,
  type Result,
  type SerialSource,
  type ServiceProblem,
  serialSourceSchema,
  succeed,
  worded,
} from '#shared-core';
import type { Clock, Scheduler } from '../clock/index.ts';
import type { openPseudoTerminal, PseudoTerminal } from '../pseudo-terminal/index.ts';
import { isVirtualRigName, startVirtualProbe } from '../virtual-probe/index.ts';
import type { OpenByteLine } from './port/byte-line.ts';
import { createMemoryLine } from './port/memory-line.ts';
import { openSerialLine } from './port/open-serial-line.ts';

type DemoSource = Extract<ProbeSource, { readonly kind: 'demo' }>;

/** The rehearsal rig: a virtual probe, and how to listen to it. */
export interface DemoRig {
  readonly source: SerialSource;
  readonly openLine: OpenByteLine;
  /** Said aloud where the rig could not use a real serial stream. */
  readonly notice: string | null;
  /** Does what a person marks in a run. */
  follow(mark: Pick<Mark, 'markId' | 'mark'>): void;
  /** What the simulated receiver shows that stands there now [mL]. */
  receiverMl(): number;
  stop(): void;
}

const memoryPath = 'rehearsal in memory';

export interface DemoRigParts {
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  readonly openTerminal: typeof openPseudoTerminal;
}

/** Starts a virtual probe over a real pseudo-terminal where there is one, in memory elsewhere. */
export function startDemoRig(
  demo: DemoSource,
  { clock, scheduler, openTerminal }: DemoRigParts,
): Result<DemoRig, ServiceProblem> {
  if (!isVirtualRigName(demo.rig)) {
    return fail({
      kind: 'request-invalid',
      message: worded('There is no demo rig named {rig}.', { rig: asGiven(demo.rig) }),
    });
  }
  const terminal = openTerminal();
  const wire = terminal.ok ? overTerminal(terminal.value) : inMemory(terminal.error);
  const probe = startVirtualProbe({
    ...demo,
    rig: demo.rig,
    heated: false,
    clock,
    scheduler,
    send: wire.send,
  });
  return succeed({
    source: serialSourceSchema.parse({
      kind: 'serial',
      path: wire.path,
      language: 'plain-text',
      timeScale: demo.timeScale,
    }),
    openLine: wire.openLine,
    notice: wire.notice,
    follow: probe.follow,
    receiverMl: probe.receiverMl,
    stop() {
      probe.stop();
      wire.close();
    },
  });
}

interface DemoWire {
  readonly path: string;
  readonly openLine: OpenByteLine;
  readonly notice: string | null;
  readonly send: (bytes: Uint8Array) => void;
  readonly close: () => void;
}

function overTerminal(terminal: PseudoTerminal): DemoWire {
  return {
    path: terminal.path,
    openLine: openSerialLine,
    notice: null,
    send: (bytes) => terminal.write(bytes),
    close: () => terminal.close(),
  };
}

function inMemory(reason: string): DemoWire {
  const { openLine, send, close } = createMemoryLine();
  return {
    path: memoryPath,
    openLine,
    notice: worded('Rehearsal without a serial port: {reason}, so the demo rig speaks in memory.', {
      reason,
    }),
    send,
    close,
  };
}
