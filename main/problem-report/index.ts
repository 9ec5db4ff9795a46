/** What whoever mends the program needs to know, without anything that leads to a person. */
export { makeProblemReport } from './make-problem-report.ts';
export { problemInShort } from './problem-in-short.ts';
export { createProblemLog, type ProblemLog, type ProblemReport } from './problem-log.ts';
