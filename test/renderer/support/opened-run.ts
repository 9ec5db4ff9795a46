import { defaultRunSettings } from '#shared-core';
import type { RunView } from '../../../renderer/stores/run-view.ts';
import { runViewAfter } from '../../../renderer/stores/run-view-reducer.ts';

/** What tells a window that a run was opened. */
export const runOpened = {
  type: 'opened',
  run: {
    origin: 'live',
    runId: 'r1',
    name: 'Pear-juice ferment',
    startedAtIso: null,
    settings: defaultRunSettings,
  },
} as const;

/** A run that was just opened, with nothing in it. */
export function openedRun(): RunView {
  const view = runViewAfter(null, runOpened);
  if (view === null) throw new Error('no view');
  return view;
}
