import type { Deed } from './hands.ts';

/** Whatever can be looked at is looked at, one after the other: each is answered, and none fails inside. */
const lookAtEverything: Deed = async ({ ask, runNow }) => {
  const runId = runNow()?.runId ?? 'none';
  await ask('problem-report/make', { withRunNames: true, window: null });
  await ask('kept-files/doubtful', {});
  await ask('app/describe', {});
  await ask('class-view/status', {});
  await ask('runs/changes', { runId });
  await ask('runs/trashed', {});
  await ask('warmth/now', {});
  await ask('run/unfinished', {});
  await ask('packs/read', { packId: 'none', fromByte: 0 });
  await ask('imports/cancel', { importId: 'none' });
};

export const curiousDeeds: readonly Deed[] = [lookAtEverything];
