import type { ProofSight } from '../run/index.ts';
import { worded } from '../wording/index.ts';

/** What was seen of a sample that was lit, the same in window and report. */
export const proofSightWords: Readonly<Record<ProofSight, string>> = {
  'burned-away': worded('burned away'),
  'burned-and-went-out': worded('burned and went out'),
  'did-not-burn': worded('did not burn'),
};

/** What a proof by burning says, and what it does not. */
export const proofMeaning = worded(
  'That a sample burns shows that it holds much ethanol, and nothing else. How much, only a measurement of strength tells.',
);
