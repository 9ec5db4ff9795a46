/** The week before: plan and log of a ferment. */
export { ChargedFrom } from './charged-from.tsx';
export { FermentButtons } from './ferment-buttons.tsx';
