/** What can be wrong with the head probe. */
export type ProbeFault =
  | 'lost'
  | 'silent'
  | 'open-circuit'
  | 'power-on-value'
  | 'spikes'
  | 'step'
  | 'frozen'
  | 'above-boiling-water'
  | 'hotter-than-pot'
  | BulbDoubt;

/** A probe that works in a place, or by an air pressure, that cannot be right: staged all the same, and told of. */
export type BulbDoubt = 'below-boiling' | 'warm-without-vapour';

/** What to do about each doubt. Nobody is sent to a hot head: eyes only. */
export const bulbDoubtActs: Readonly<Record<BulbDoubt, string>> = {
  'below-boiling': 'Check the air pressure entered, and read the glass thermometer by eye.',
  'warm-without-vapour':
    'See through the glass how far the vapour has come, and read the glass thermometer.',
};

/** What a person can see and do about each fault. */
export const probeFaultWords: Readonly<Record<ProbeFault, string>> = {
  lost: 'the probe is disconnected',
  silent: 'the probe sends nothing',
  'open-circuit': 'the probe reports an open circuit or an impossible value',
  'power-on-value': 'the probe sends 85.0 °C, the value it shows before its first measurement',
  spikes: 'readings jump back and forth faster than a bulb can follow',
  step: 'the reading jumped faster than vapour can change, as when a probe slips',
  frozen: 'the reading has stopped changing altogether, even in its last digit',
  'above-boiling-water': 'the reading is above the boiling point of water at this pressure',
  'hotter-than-pot': 'the head reads hotter than the pot that feeds it',
  'below-boiling': 'it rests below the lowest boiling point at this air pressure',
  'warm-without-vapour': 'it is too cool for vapour, yet does not cool down',
};

/** True for what a loose plug or a broken cable does: readings fail to come, and may come again. */
export function isDropout(fault: ProbeFault | null): boolean {
  return fault === 'lost' || fault === 'silent' || fault === 'open-circuit';
}

/** What to do about a probe that drops out again and again. */
export const dropoutsAct =
  'Check plug and cable where they are cold, and read the glass thermometer by eye until readings stay.';

/** What to do when a bulb that cannot be relied on shows that the head has left its level. */
export const doubtfulRiseAct =
  'Check the distillate; if it is weak, take the heat off (flame out, mantle down).';
