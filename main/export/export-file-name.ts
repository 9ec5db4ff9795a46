import type { RunSummary } from '#shared-core';

/** A file name that sorts by time and that every file system takes. */
export function exportFileName(
  { runId, name }: Pick<RunSummary, 'runId' | 'name'>,
  extension: string,
): string {
  const words = name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${[runId, words].filter((part) => part !== '').join('-')}.${extension}`;
}
