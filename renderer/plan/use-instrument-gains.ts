import type { InstrumentGains, RunSettings } from '#shared-core';
import { useWorkedOut, type WorkedOut } from './use-worked-out.ts';

/** What each instrument would narrow, worked out beside the window; of what tells nothing of the end, nothing is asked. */
export function useInstrumentGains(settings: RunSettings | null): WorkedOut<InstrumentGains> {
  const asked: RunSettings | null =
    settings === null
      ? null
      : { ...settings, name: '', attentionCheckS: null, safetyConfirms: [], trials: [] };
  return useWorkedOut<RunSettings, InstrumentGains>(asked, startGainsWorker);
}

function startGainsWorker(): Worker {
  return new Worker(new URL('./gains-worker.ts', import.meta.url), { type: 'module' });
}
