import type { ServiceProblem } from '#shared-core';

/** A problem for whoever mends the program: its kind, and what the system or the program said of it. */
export function problemInShort(problem: ServiceProblem): string {
  const said = 'message' in problem ? `: ${problem.message}` : '';
  const where = 'path' in problem ? ` at ${problem.path}` : '';
  return `${problem.kind}${where}${said}`;
}
