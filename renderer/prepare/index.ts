/** The place in which a run is set up. */
export { Invitation } from './invitation.tsx';
export { PreparePlace } from './prepare-place.tsx';
