export { PlanFermentButton } from './plan-ferment-button.tsx';
