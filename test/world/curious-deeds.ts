import { fetchPack } from './fetch-pack.ts';
import type { Deed } from './hands.ts';

/** Whatever can be looked at is looked at, one after the other: each is answered, and none fails inside. */
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
  await ask('warmth/now', {});
  await ask('run/unfinished', {});
  await ask('packs/read', { packId: 'none', fromByte: 0 });
  await ask('imports/cancel', { importId: 'none' });
};

/** The files of a run as they are: at least as long as what is packed of them says. */
const takeFilesOut: Deed = async (hands) => {
  const runId = hands.runsOver()[0] ?? hands.runNow()?.runId;
  if (runId === undefined) return;
  await fetchPack(hands, (packId) => hands.ask('packs/make-files', { packId, runId }));
};

/** The week of a ferment, and how warm it was kept. */
const takeFermentsOut: Deed = async (hands) => {
  const { ask } = hands;
  const listed = await ask('ferments/list', {});
  const fermentIds = listed.ok ? listed.value.ferments.map(({ fermentId }) => fermentId) : [];
  const [fermentId] = fermentIds;
  if (fermentId === undefined) return;
  await ask('warmth/report', { fermentId });
  await fetchPack(hands, (packId) => ask('packs/make-ferments', { packId, fermentIds }));
};

/** A run that was taken in from a table, with its pages and its tables: a small one, as a pack takes a second. */
const takePackOut: Deed = async (hands) => {
  const run = hands.takenIn.all().find(({ place }) => place === 'library');
  if (run === undefined) return;
  const { runId } = run;
  await fetchPack(hands, (packId) => hands.ask('packs/make', { packId, runIds: [runId] }));
};

export const curiousDeeds: readonly Deed[] = [
  lookAtEverything,
  takeFilesOut,
  takeFermentsOut,
  takePackOut,
];
