export { Debrief } from './debrief.tsx';
