import type { Deed } from './hands.ts';

/**
 * Whatever can be looked at is looked at, one after the other: each is answered, and none fails inside. Packs are not made: they are compressed
 * beside this thread, in a time that is not the world's.
 */
const lookAtEverything: Deed = async ({ ask, runNow }) => {
  const runId = runNow()?.runId ?? 'none';
  await ask('problem-report/make', { withRunNames: true, window: null });
  await ask('kept-files/doubtful', {});
  await ask('app/describe', {});
  await ask('app/open-second-screen', {});
  await ask('class-view/status', {});
  await ask('class-view/open', {});
  await ask('class-view/shut', {});
  await ask('ports/list', {});
  await ask('probe/status', {});
  await ask('runs/changes', { runId });
  await ask('runs/trashed', {});
  const warmth = await ask('warmth/now', {});
  const fermentId = warmth.ok ? warmth.value.kept?.fermentId : undefined;
  if (fermentId !== undefined) await ask('warmth/report', { fermentId });
  await ask('run/unfinished', {});
  await ask('packs/read', { packId: 'none', fromByte: 0 });
  await ask('imports/cancel', { importId: 'none' });
};

export const curiousDeeds: readonly Deed[] = [lookAtEverything];
