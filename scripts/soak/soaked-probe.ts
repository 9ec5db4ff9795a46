import { createIsolatedProbeHub, forkProbeWorker, type ProbeWorker, systemScheduler } from '#main';
import { serialSourceSchema } from '#shared-core';
import { startSpeaker } from './soak-speaker.ts';

/** A probe that speaks without end, and the hub that is to hear it in a process of its own. */
export async function startSoakedProbe(pace: string) {
  const speaker = await startSpeaker(pace);
  let worker: ProbeWorker | null = null;
  const probeHub = createIsolatedProbeHub({
    scheduler: systemScheduler,
    startWorker() {
      worker = forkProbeWorker();
      return worker;
    },
  });
  return {
    speaker,
    probeHub,
    source: serialSourceSchema.parse({ kind: 'serial', path: speaker.path }),
    /** Of the process that reads the probe; null before it was started. */
    processId: (): number | null => worker?.processId ?? null,
  };
}
