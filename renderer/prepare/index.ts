export { Invitation } from './invitation.tsx';
export { PreparePlace } from './prepare-place.tsx';
export { createPrepareStore, type PrepareState, type PrepareStore } from './prepare-store.ts';
export { settingsFromDraft } from './settings-from-draft.ts';
