import { systemClock } from '../clock/index.ts';
import { nodeFileLayer } from '../file-layer/index.ts';
import { makeProblemReport, type ProblemReport, problemInShort } from '../problem-report/index.ts';
import { createRunLibrary } from '../run-library/index.ts';
import type { AppFacts } from './app-handlers.ts';
import { doubtfulFiles } from './doubtful-files.ts';

/** The report of a computer where the program did not start; reads the folder of runs and changes nothing. */
export async function reportWithoutServices(
  app: Omit<AppFacts, 'shell'> & { readonly shell: string },
  runsFolder: string,
  because: string | null,
): Promise<ProblemReport> {
  const files = nodeFileLayer;
  const clock = systemClock;
  const library = createRunLibrary({ files, clock, runsFolder, mayWrite: () => false });
  const listed = await library.list();
  const problems = [because, listed.ok ? null : `runs: ${problemInShort(listed.error)}`];
  const lastAtIso = new Date(clock.wallMs()).toISOString();
  return makeProblemReport({
    app,
    nowMs: clock.wallMs(),
    files,
    runsFolder,
    mayWrite: false,
    runs: listed.ok ? listed.value : null,
    doubtfulFiles: (await doubtfulFiles(files, runsFolder)).map(
      ({ name, state }) => `${name}: ${state}`,
    ),
    status: null,
    ports: [],
    recording: null,
    recentProblems: problems.flatMap((what) =>
      what === null ? [] : [{ lastAtIso, times: 1, what }],
    ),
    window: null,
    withRunNames: false,
  });
}
