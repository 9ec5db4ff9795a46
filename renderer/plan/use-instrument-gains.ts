import type { InstrumentGains, RunSettings } from '#shared-core';
import { useWorkedOut, type WorkedOut } from '../parts/index.ts';
import { whenTypingPauses } from './when-typing-pauses.ts';

const gaining = whenTypingPauses<RunSettings, InstrumentGains>(
  () => new Worker(new URL('./gains-worker.ts', import.meta.url), { type: 'module' }),
);

/** What each instrument would narrow, worked out beside the window; of what tells nothing of the end, nothing is asked. */
export function useInstrumentGains(settings: RunSettings | null): WorkedOut<InstrumentGains> {
  const asked: RunSettings | null =
    settings === null
      ? null
      : { ...settings, name: '', attentionCheckS: null, safetyConfirms: [], trials: [] };
  return useWorkedOut(asked, gaining);
}
