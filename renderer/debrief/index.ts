/** What a class sees at the end of a run: expected beside found. */
export { Debrief } from './debrief.tsx';
