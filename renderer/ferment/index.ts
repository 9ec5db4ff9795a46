export { ChargedFrom } from './charged-from.tsx';
export { FermentButtons } from './ferment-buttons.tsx';
