import { type ServiceProblem, wordingOf } from '#shared-core';

/**
 * A problem for whoever mends the program: its kind, and what the system or the program said of it. What a person, a file or a device wrote
 * is left out: it may be anything, such as the title that somebody gave a column.
 */
export function problemInShort(problem: ServiceProblem): string {
  const said = 'message' in problem ? `: ${withoutGiven(problem)}` : '';
  const where = 'path' in problem ? ` at ${problem.path}` : '';
  return `${problem.kind}${where}${said}`;
}

function withoutGiven(problem: Extract<ServiceProblem, { readonly message: string }>): string {
  const { message } = problem;
  const wording = { ...('wording' in problem && problem.wording), ...wordingOf([message]) };
  const given = Object.values(wording).flatMap(({ values }) =>
    Object.values(values).flatMap((value) => (typeof value === 'object' ? value.asGiven : [])),
  );
  return given
    .filter((text) => text.length > 1)
    .toSorted((a, b) => b.length - a.length)
    .reduce((left, text) => left.replaceAll(text, '[as given]'), message);
}
