import { setUpSchema } from '#shared-core';
import { setUpOf } from './find-kept.ts';
import type { Deed, Hands } from './hands.ts';
import { nothing } from './kept-things.ts';

const names = ['Lab 1', 'Lab 2', null] as const;

const drawName = ({ random }: Hands) => names[random.integer(0, names.length - 1)] ?? null;

const keepSetUp: Deed = async (hands) => {
  const name = drawName(hands);
  const volumeMl = 100 + hands.fresh();
  const setUp = setUpSchema.parse({ name: 'Pear juice', charge: { volumeMl, strengthAbv: 9 } });
  const keep = hands.kept.wish(setUpOf(name), `${volumeMl} mL`);
  if ((await hands.ask('rigs/keep', { name, setUp })).ok) keep();
};

const forgetSetUp: Deed = async (hands) => {
  const name = drawName(hands);
  if (name === null) return;
  const keep = hands.kept.wish(setUpOf(name), nothing);
  if ((await hands.ask('rigs/forget', { name })).ok) keep();
};

/** Set-ups are kept for the next lesson, written over and forgotten. */
export const setUpDeeds: readonly Deed[] = [keepSetUp, keepSetUp, forgetSetUp];
