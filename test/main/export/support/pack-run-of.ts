import type { PackRun } from '#main';
import type { RunToStudy } from '../../../../shared-core/study/study-run.ts';

/** A run to be studied as the run library would hand it over. */
export function packRunOf({
  entries,
  runId,
  name,
  startedAtIso,
  rehearsal,
  imported,
  settings,
  appVersion,
  modelVersion,
  endS,
  inputs,
}: RunToStudy): PackRun {
  return {
    entries,
    run: {
      settings,
      appVersion,
      modelVersion,
      endS,
      inputs,
      lateMarks: [],
      summary: {
        runId,
        name,
        notes: '',
        startedAtIso,
        durationS: endS,
        readings: inputs.length,
        ended: 'clean',
        rehearsal,
        imported,
        plateau: null,
        heatOffCalledS: null,
        damagedRecords: 0,
        unreadable: null,
      },
    },
  };
}
