export { PlanSection } from './plan-section.tsx';
