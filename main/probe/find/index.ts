export { type FindProbeDependencies, findProbe } from './find-probe.ts';
