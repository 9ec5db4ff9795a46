import { correctionOf, measurementOf, nameOf, once } from './find-kept.ts';
import type { Deed, Hands } from './hands.ts';
import { takeIn } from './table-deeds.ts';
import { standsIn } from './taken-in.ts';

/** Runs of this library that can be put right: those that are over, and those that were taken in. */
function runs({ runsOver, takenIn }: Hands): readonly string[] {
  const inLibrary = takenIn.all().filter(({ place }) => place === 'library');
  return [...runsOver(), ...inLibrary.map(({ runId }) => runId)];
}

/** A run to do something with; where there is none, one is taken in first. */
async function someRun(hands: Hands): Promise<string | null> {
  if (runs(hands).length === 0) await takeIn(hands);
  const there = runs(hands);
  return there[hands.random.integer(0, Math.max(0, there.length - 1))] ?? null;
}

const rename: Deed = async (hands) => {
  const runId = await someRun(hands);
  if (runId === null) return;
  const name = `Lesson ${hands.fresh()}`;
  const keep = hands.kept.wish(nameOf(runId), name);
  if ((await hands.ask('runs/rename', { runId, name, notes: '' })).ok) keep();
};

const correct: Deed = async (hands) => {
  const runId = await someRun(hands);
  if (runId === null) return;
  const number = hands.fresh();
  const charge = { volumeMl: 300 + number, strengthAbv: 9, standardUncertaintyAbv: 0.5 };
  const keep = hands.kept.wish(correctionOf(runId, number), once);
  const correction = { charge, reason: `no. ${number}` };
  if ((await hands.ask('runs/correct', { runId, correction })).ok) keep();
};

const book: Deed = async (hands) => {
  const runId = await someRun(hands);
  if (hands.takenIn.all().some((run) => run.runId === runId && !run.staysInLibrary)) return;
  if (runId === null) return;
  const massG = hands.fresh();
  const keep = hands.kept.wish(measurementOf(runId, massG), once);
  const mark = { type: 'liquid-mass', liquid: 'residue', massG } as const;
  if ((await hands.ask('runs/book', { runId, mark })).ok) keep();
};

const putAway: Deed = async (hands) => {
  const there = hands.takenIn.all().filter(({ place }) => place === 'library');
  const run = there.find(({ staysInLibrary }) => !staysInLibrary);
  if (run === undefined) return takeIn(hands);
  const keep = hands.kept.wish(run.thing, standsIn('bin', run.readings));
  if ((await hands.ask('runs/trash', { runId: run.runId })).ok) keep();
};

const putBack: Deed = async ({ kept, takenIn, ask }) => {
  const run = takenIn.all().find(({ place }) => place === 'bin');
  if (run === undefined) return;
  const keep = kept.wish(run.thing, standsIn('library', run.readings));
  if ((await ask('runs/restore', { runId: run.runId })).ok) keep();
};

/** Runs of earlier lessons are named, put right, measured, put away and brought back. */
export const bookDeeds: readonly Deed[] = [rename, correct, book, putAway, putBack];
