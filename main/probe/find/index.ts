/** Which of the ways a probe may speak a port's probe speaks, found by listening and asking. */
export { type FindProbeDependencies, findProbe } from './find-probe.ts';
