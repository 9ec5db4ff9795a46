import { defaultRunSettings, type LogHeader } from '#shared-core';

/** The header of a recorded run that nothing is special about. */
export function logHeader(runId = 'run'): LogHeader {
  return {
    format: 'still-head-run-log',
    version: 1,
    runId,
    startedAtIso: '2025-03-14T10:15:00.000Z',
    settings: defaultRunSettings,
    appVersion: '0.1.0',
    modelVersion: '1',
    timeScale: 1,
    rehearsal: false,
    source: null,
    origin: 'recorded',
  };
}
