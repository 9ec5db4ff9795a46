import { worded } from '../wording/index.ts';
import { beforeHeat } from './before-heat.ts';
import type { Caution } from './caution.ts';
import { proofByBurning } from './proof-by-burning.ts';
import { toolAndRules } from './tool-and-rules.ts';
import { whatIsCollected } from './what-is-collected.ts';
import { whenItGoesWrong } from './when-it-goes-wrong.ts';
import { whileHot } from './while-hot.ts';
import { whileItFerments } from './while-it-ferments.ts';

/** The one list that everything said about danger is made from, in the order in which it is read. */
export const cautionGroups = [
  { title: worded('The tool and the rules'), cautions: toolAndRules },
  { title: worded('When something goes wrong'), cautions: whenItGoesWrong },
  { title: worded('While it ferments'), cautions: whileItFerments },
  { title: worded('Before any heat'), cautions: beforeHeat },
  { title: worded('While it is hot'), cautions: whileHot },
  { title: worded('What is collected'), cautions: whatIsCollected },
  { title: worded('Proving it by burning a sample'), cautions: proofByBurning },
] as const satisfies readonly { readonly title: string; readonly cautions: readonly Caution[] }[];

export type CautionId = (typeof cautionGroups)[number]['cautions'][number]['id'];

/** A caution of the list. */
export type KnownCaution = Caution & { readonly id: CautionId };

export const cautions: readonly KnownCaution[] = cautionGroups.flatMap<KnownCaution>(
  (group) => group.cautions,
);
