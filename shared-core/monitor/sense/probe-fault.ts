import { worded } from '../../wording/index.ts';

/** What can be wrong with the head probe. */
export type ProbeFault =
  | 'lost'
  | 'silent'
  | 'open-circuit'
  | 'program-closed'
  | 'reader-stopped'
  | 'spikes'
  | 'step'
  | 'frozen'
  | 'above-boiling-water'
  | 'hotter-than-pot'
  | BulbDoubt;

/** A probe that works in a place, or by an air pressure, that cannot be right: staged all the same, and told of. */
export type BulbDoubt = 'below-boiling';

/** What a person can see of each fault. */
export const probeFaultWords: Readonly<Record<ProbeFault, string>> = {
  lost: worded('the probe is disconnected'),
  silent: worded('the probe sends nothing'),
  'open-circuit': worded('the probe reports an open circuit or an impossible value'),
  'program-closed': worded('the program was closed and heard nothing'),
  'reader-stopped': worded(
    'the part of the program that reads the probe stopped and is being started again',
  ),
  spikes: worded('readings jump back and forth faster than a bulb can follow'),
  step: worded('the reading jumped faster than vapour can change, as when a probe slips'),
  frozen: worded('the reading has stopped changing altogether, even in its last digit'),
  'above-boiling-water': worded('the reading is above the boiling point of water at this pressure'),
  'hotter-than-pot': worded('the head reads hotter than the pot that feeds it'),
  'below-boiling': worded('it rests below the lowest boiling point at this air pressure'),
};

/** True for what a loose plug or a broken cable does: readings fail to come, and may come again. */
export function isDropout(fault: ProbeFault | null): boolean {
  return fault !== null && faultKinds[fault] === 'gone';
}

/**
 * Which alarm a fault of the head probe belongs to: it is `gone` when nothing comes, `unheard` when the program was not there to
 * hear it, which is nobody's to mend; `impossible` when what comes cannot
 * be; `contradicted` when it cannot be by what another channel says, which may itself be wrong; `doubted` when the probe
 * works, in a place or by a pressure that cannot be right.
 */
export const faultKinds = {
  lost: 'gone',
  silent: 'gone',
  'open-circuit': 'gone',
  'reader-stopped': 'gone',
  'program-closed': 'unheard',
  spikes: 'impossible',
  step: 'impossible',
  frozen: 'impossible',
  'above-boiling-water': 'impossible',
  'hotter-than-pot': 'contradicted',
  'below-boiling': 'doubted',
} as const satisfies Record<
  ProbeFault,
  'gone' | 'unheard' | 'impossible' | 'contradicted' | 'doubted'
>;

export type FaultKind = (typeof faultKinds)[ProbeFault];

/** True where the head's own readings cannot be used; another channel's word against them is no ground for that. */
export function isBlind(fault: ProbeFault | null): boolean {
  if (fault === null) return false;
  const kind = faultKinds[fault];
  return kind === 'gone' || kind === 'unheard' || kind === 'impossible';
}
