/** The plan of a ferment, from sugar to strength. */
export { PlanFermentButton } from './plan-ferment-button.tsx';
