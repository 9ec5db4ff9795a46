import { usualWarmthBand } from '#shared-core';
import { nothingRead } from '../support/nothing-read.ts';
import { entryOf, fermentCalled, statedOf, warmthOf } from './find-kept.ts';
import type { Deed, Hands } from './hands.ts';
import { nothing } from './kept-things.ts';

/** More ferments than these are not begun. */
const mostFerments = 3;

/** In the week before the run, by a clock that somebody may set an hour forward or back. */
const beganAtIso = '2025-03-10T09:00:00.000Z';
const readAtIso = '2025-03-12T09:00:00.000Z';

const stated = (name: string, volumeMl: number) => ({
  name,
  beganAtIso,
  volumeMl,
  sugarG: null,
  wentIn: 'pear juice',
});

async function someFerment(hands: Hands) {
  const listed = await hands.ask('ferments/list', {});
  const ferments = listed.ok ? listed.value.ferments : [];
  return ferments[hands.random.integer(0, Math.max(0, ferments.length - 1))] ?? null;
}

const begin: Deed = async (hands) => {
  const listed = await hands.ask('ferments/list', {});
  if (!listed.ok || listed.value.ferments.length >= mostFerments) return;
  const name = `Pear no. ${hands.fresh()}`;
  const keep = hands.kept.wish(fermentCalled(name), 'begun');
  if ((await hands.ask('ferments/begin', { stated: stated(name, 1000) })).ok) keep();
};

const enter: Deed = async (hands) => {
  const ferment = await someFerment(hands);
  if (ferment === null) return begin(hands);
  const massG = hands.fresh();
  const { fermentId } = ferment;
  const keep = hands.kept.wish(entryOf(fermentId, massG), 'counted');
  const read = { ...nothingRead, atIso: readAtIso, massG };
  if ((await hands.ask('ferments/enter', { fermentId, read })).ok) keep();
};

const withdraw: Deed = async (hands) => {
  const ferment = await someFerment(hands);
  const entry = ferment?.entries.find(({ withdrawnAtIso }) => withdrawnAtIso === null);
  if (ferment === null || entry === undefined) return begin(hands);
  const { fermentId } = ferment;
  const { entryId, read } = entry;
  const keep = hands.kept.wish(entryOf(fermentId, read.massG), 'withdrawn');
  if ((await hands.ask('ferments/withdraw', { fermentId, entryId })).ok) keep();
};

const correct: Deed = async (hands) => {
  const ferment = await someFerment(hands);
  if (ferment === null) return begin(hands);
  const { fermentId } = ferment;
  const volumeMl = 1000 + hands.fresh();
  const keep = hands.kept.wish(statedOf(fermentId), `${volumeMl} mL`);
  const { name } = ferment.stated;
  const body = { fermentId, stated: stated(name, volumeMl), reason: 'misread' };
  if ((await hands.ask('ferments/correct', body)).ok) keep();
};

/** One ferment at a time is kept warm: the one that was is left first. */
const keepWarm: Deed = async (hands) => {
  const ferment = await someFerment(hands);
  if (ferment === null) return begin(hands);
  const { fermentId } = ferment;
  const now = await hands.ask('warmth/now', {});
  const before = now.ok ? now.value.kept?.fermentId : undefined;
  const leaves = before === undefined ? null : hands.kept.wish(warmthOf(before), nothing);
  const keeps = hands.kept.wish(warmthOf(fermentId), 'kept');
  const body = { fermentId, band: usualWarmthBand, channel: 'ferment' };
  if (!(await hands.ask('warmth/keep', body)).ok) return;
  leaves?.();
  keeps();
};

const leave: Deed = async (hands) => {
  const now = await hands.ask('warmth/now', {});
  const fermentId = now.ok ? now.value.kept?.fermentId : undefined;
  if (fermentId === undefined) return;
  const keep = hands.kept.wish(warmthOf(fermentId), nothing);
  if ((await hands.ask('warmth/leave', { fermentId })).ok) keep();
};

/** The book of the ferments, and one of them kept warm under watch. */
export const fermentDeeds: readonly Deed[] = [
  begin,
  enter,
  enter,
  withdraw,
  correct,
  keepWarm,
  leave,
];
