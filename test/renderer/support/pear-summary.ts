import type { RunSummary } from '#shared-core';

/** A run of fifty minutes that is whole and was ended in order. */
export const pearSummary: RunSummary = {
  runId: '20260302T090000Z',
  name: 'Pear ferment',
  notes: '',
  startedAtIso: '2026-03-02T09:00:00.000Z',
  durationS: 3000,
  readings: 3000,
  ended: 'clean',
  rehearsal: false,
  plateau: { value: 78.042, standardUncertainty: 0.12 },
  heatOffCalledS: 2800,
  damagedRecords: 0,
  unreadable: null,
};
