import type { RequestName } from '#shared-core';

/**
 * What takes more than a moment, because it goes through whole runs or files: it is answered by a process beside the services, so
 * that the record of a run under way never waits for it.
 */
export const deskRequests = [
  'runs/list',
  'runs/read',
  'runs/changes',
  'imports/begin',
  'imports/add',
  'imports/finish',
  'imports/cancel',
  'packs/make',
  'packs/make-ferments',
  'packs/make-files',
  'packs/make-table',
  'packs/read',
  'packs/drop',
] as const satisfies readonly RequestName[];

export type DeskRequest = (typeof deskRequests)[number];
