import { assertNever, emptySeries } from '#shared-core';
import { withInputs } from './inputs-in-view.ts';
import type { RunView, RunViewEvent } from './run-view.ts';
import { withSnapshotStage } from './stages-in-view.ts';

/** What is in view after an event; `null` while no run is. */
export function runViewAfter(view: RunView | null, event: RunViewEvent): RunView | null {
  if (event.type === 'opened') {
    return {
      ...event.run,
      inputCount: 0,
      lastInputS: 0,
      tracks: {},
      marks: [],
      doubtful: emptySeries(),
      gaps: [],
      snapshot: null,
      stages: [],
      estimates: [],
      endedS: null,
    };
  }
  if (view === null || event.type === 'closed') return null;
  // A run that begins while news of the one before is still on its way must not be drawn over it.
  if (event.runId !== view.runId) return view;
  switch (event.type) {
    case 'inputs':
      return withInputs(view, event.inputs);
    case 'snapshot':
      return {
        ...view,
        snapshot: event.snapshot,
        stages: withSnapshotStage(view.stages, event.snapshot),
      };
    case 'stages-known':
      return {
        ...view,
        stages: view.snapshot ? withSnapshotStage(event.stages, view.snapshot) : event.stages,
      };
    case 'estimates-known':
      return { ...view, estimates: event.estimates };
    case 'ended':
      return { ...view, endedS: event.timeS };
    default:
      return assertNever(event);
  }
}
