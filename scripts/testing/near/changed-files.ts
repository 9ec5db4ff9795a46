import { type CommandOutcome, runCommand } from '../run-command.ts';

type RunGit = (words: readonly string[]) => Promise<Pick<CommandOutcome, 'code' | 'output'>>;

export interface Changes {
  /** What they are counted from, for people. */
  readonly since: string;
  /** Paths below the project's folder; what was removed is not among them. */
  readonly files: readonly string[];
}

/**
 * What differs from a commit, uncommitted and new files with it. Without a commit: from the last one, or, where nothing has changed
 * since, from where this branch left `main`. Null for a commit that git does not know.
 */
export async function changedFiles(since: string | null, git: RunGit): Promise<Changes | null> {
  if (since !== null) return changesFrom(since, git);
  const uncommitted = await changesFrom('HEAD', git);
  if (uncommitted === null || uncommitted.files.length > 0) return uncommitted;
  const fork = await git(['merge-base', 'main', 'HEAD']);
  return fork.code === 0 ? changesFrom(fork.output.trim().slice(0, 12), git) : uncommitted;
}

async function changesFrom(since: string, git: RunGit): Promise<Changes | null> {
  const changed = await git(['diff', '--name-only', '--diff-filter=d', since, '--']);
  if (changed.code !== 0) return null;
  const added = await git(['ls-files', '--others', '--exclude-standard']);
  const files = new Set(`${changed.output}\n${added.output}`.split('\n').filter(Boolean));
  return { since, files: [...files].sort() };
}

/** Git in that folder. */
export function gitIn(cwd: string): RunGit {
  return (words) => runCommand('git', words, { cwd });
}
