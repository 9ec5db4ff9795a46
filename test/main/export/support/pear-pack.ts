import type { PackRequest, PackRun } from '#main';
import { createMonitor } from '#shared-core';
import { pearRun } from '../../../shared-core/report/support/pear-run.ts';

/** The simulated pear ferment as the run library would hand it over, every fifth second of it. */
export function pearPackRun(
  changes: { readonly runId?: string; readonly name?: string } = {},
): PackRun {
  const { entries, runId, name, startedAtIso, ...run } = pearRun().run;
  const inputs = run.inputs.filter((input) => input.kind !== 'reading' || input.timeS % 5 === 0);
  return {
    entries,
    run: {
      settings: run.settings,
      appVersion: run.appVersion,
      modelVersion: run.modelVersion,
      endS: run.endS,
      inputs,
      lateMarks: [],
      summary: {
        runId: changes.runId ?? runId,
        name: changes.name ?? name,
        notes: 'Kim Example stood at the still',
        startedAtIso,
        durationS: run.endS,
        readings: inputs.length,
        ended: 'clean',
        rehearsal: false,
        plateau: null,
        heatOffCalledS: null,
        damagedRecords: 0,
        unreadable: null,
      },
    },
  };
}

/** A second run without anything measured after it, with a name that a spreadsheet would run. */
export function packRequest(): PackRequest {
  const second = pearPackRun({ runId: '20260319T100000Z', name: '=1+1 & "Zweiter Lauf", grün' });
  return {
    runs: [pearPackRun(), { run: second.run }],
    createMonitor,
    madeBy: { version: '0.1.0', modelVersion: '1' },
    createdMs: Date.UTC(2026, 2, 20, 8, 30, 0),
  };
}
