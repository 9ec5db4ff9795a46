import type { ProbeSource, ProbeStatus, Result, ServiceProblem } from '#shared-core';
import { type ProbeHub, sourceAsNow } from '../probe/index.ts';

/** The probe that a rehearsal's simulated still took the place of. */
export interface ProbeBeforeRehearsal {
  /** A still takes the place of a probe, and gives it back where it can't be connected; anything else is the person's own choice. */
  connect(source: ProbeSource): Promise<Result<ProbeStatus, ServiceProblem>>;
  /** The person let go of whatever was connected. */
  forget(): void;
  /** Lets go of the still; what was connected before it is then connected again, and where that fails, its status says so. */
  comeBack(): Promise<void>;
}

export function createProbeBeforeRehearsal(probeHub: ProbeHub): ProbeBeforeRehearsal {
  let before: ProbeSource | null = null;

  function see(next: ProbeSource): void {
    const { source } = probeHub.status();
    if (next.kind !== 'demo') before = null;
    else if (source !== null && source.kind !== 'demo') before = source;
  }

  async function connectAgain(source: ProbeSource): Promise<void> {
    const now = sourceAsNow(source, await probeHub.listPorts());
    // Whoever has connected something meanwhile is not overruled.
    if (probeHub.status().source === null) await probeHub.connect(now);
  }

  async function comeBack(): Promise<void> {
    const source = before;
    before = null;
    // Nor is whoever connected something in place of the still.
    if (probeHub.status().source?.kind === 'demo') await probeHub.disconnect();
    // A port may take its time to open: nobody who stops a run waits for it.
    if (source !== null) void connectAgain(source);
  }

  return {
    async connect(source) {
      see(source);
      const connected = await probeHub.connect(source);
      const isGivenUp = !connected.ok && connected.error.kind !== 'superseded';
      if (isGivenUp && source.kind === 'demo') await comeBack();
      return connected;
    },
    forget() {
      before = null;
    },
    comeBack,
  };
}
