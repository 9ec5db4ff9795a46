import { isDeepStrictEqual } from 'node:util';
import type { ProbeSource, ProbeStatus, Result, ServiceProblem } from '#shared-core';
import { type ProbeHub, sourceAsNow } from '../probe/index.ts';

/** The probe that a rehearsal's simulated still took the place of. */
export interface ProbeBeforeRehearsal {
  /** A still takes the place of a probe, and gives it back where it can't be connected; anything else is the person's own choice. */
  connect(source: ProbeSource): Promise<Result<ProbeStatus, ServiceProblem>>;
  /** The person let go of whatever was connected. */
  forget(): void;
  /** Lets go of the still; what was connected before it is then connected again, and where that fails, what is told of the probe says so. */
  comeBack(): Promise<void>;
  /** What is told of the probe: with the one that did not come back, while nothing is connected in its place. */
  told(status: ProbeStatus): ProbeStatus;
}

/** @param tell called where what is told of the probe has changed and the hub has no news */
export function createProbeBeforeRehearsal(
  probeHub: ProbeHub,
  tell: (status: ProbeStatus) => void,
): ProbeBeforeRehearsal {
  let before: ProbeSource | null = null;
  let notBack: ProbeStatus['notBack'];

  const told = (status: ProbeStatus): ProbeStatus =>
    status.source === null && notBack ? { ...status, notBack } : status;

  function see(next: ProbeSource): void {
    const { source } = probeHub.status();
    if (next.kind !== 'demo') before = null;
    else if (source !== null && source.kind !== 'demo') before = source;
    // One that did not come back is still the person's: it is given back after the next rehearsal.
    else if (source === null && notBack) before = notBack.source;
  }

  async function connectAgain(source: ProbeSource): Promise<void> {
    const now = sourceAsNow(source, await probeHub.listPorts());
    // Whoever has connected something meanwhile is not overruled.
    if (probeHub.status().source !== null) return;
    const connected = await probeHub.connect(now);
    if (connected.ok || connected.error.kind === 'superseded') return;
    didNotComeBack(now, connected.error);
  }

  function didNotComeBack(source: ProbeSource, problem: ServiceProblem): void {
    notBack = { source, problem };
    tell(told(probeHub.status()));
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
      if (connected.ok) {
        notBack = undefined;
        return connected;
      }
      const { error } = connected;
      if (error.kind === 'superseded') return connected;
      if (source.kind === 'demo') await comeBack();
      else if (notBack && isDeepStrictEqual(source, notBack.source)) didNotComeBack(source, error);
      return connected;
    },
    forget() {
      before = null;
      if (notBack === undefined) return;
      notBack = undefined;
      tell(probeHub.status());
    },
    comeBack,
    told,
  };
}
