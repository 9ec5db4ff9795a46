/** Names of run folders: they sort by time and can't lead out of the library. */
const runIdPattern = /^[0-9A-Za-z][0-9A-Za-z-]{0,119}$/;

export function isRunId(name: string): boolean {
  return runIdPattern.test(name);
}

/** `20250314T101500Z`, or with `-2`, `-3` … when that is taken. */
export function newRunId(wallMs: number, taken: ReadonlySet<string>): string {
  const base = `${new Date(wallMs).toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
  let runId = base;
  for (let number = 2; taken.has(runId); number += 1) runId = `${base}-${number}`;
  return runId;
}

/** When a run began by the name of its folder; null where people renamed it. */
export function startOfRunId(runId: string): Date | null {
  const found = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z(-\d+)?$/.exec(runId);
  if (found === null) return null;
  const [, year, month, day, hour, minute, second] = found;
  const start = new Date(`${year}-${month}-${day}T${hour}:${minute}:${second}Z`);
  return Number.isNaN(start.getTime()) ? null : start;
}
