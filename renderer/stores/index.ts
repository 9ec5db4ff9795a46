/** What the window holds, and how each event changes it. */
export { benchMarks } from './bench-marks.ts';
export {
  type BenchState,
  isAboutProbe,
  isRunUnderWay,
  isViewer,
  mayCommand,
} from './bench-state.ts';
export { type BenchStore, createBenchStore } from './bench-store.ts';
export { correctedHeadC } from './corrected-head.ts';
export { newestHead } from './newest-head.ts';
export { createNoteDraftStore, type NoteDraftStore } from './note-draft-store.ts';
export type { Preferences } from './preferences.ts';
export {
  createPreferencesStore,
  type PreferencesState,
  type PreferencesStore,
} from './preferences-store.ts';
export {
  type FirstFractionKind,
  firstDraft,
  type PrepareDraft,
  type PressureFrom,
  type PressureUnit,
  type ProbeKind,
  type Role,
  type StopKind,
  withConfirms,
  withTrial,
} from './prepare-draft.ts';
export { createPrepareStore, type PrepareState, type PrepareStore } from './prepare-store.ts';
export type { LinkGap, RunIdentity, RunView } from './run-view.ts';
export { runViewAfter } from './run-view-reducer.ts';
export { createRunViewStore, type RunViewStore } from './run-view-store.ts';
export { stagesOfRecord } from './stages-in-view.ts';
export { type Trouble, troublesOf } from './troubles.ts';
