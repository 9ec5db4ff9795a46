export { settingsFromDraft } from '../draft/settings-from-draft.ts';
export {
  createPrepareStore,
  type PrepareState,
  type PrepareStore,
} from '../stores/prepare-store.ts';
export { Invitation } from './invitation.tsx';
export { PreparePlace } from './prepare-place.tsx';
