import type { PrepareDraft } from '../stores/index.ts';

/** Entries that are typed. */
export type TextField = {
  [F in Exclude<keyof PrepareDraft, 'bell'>]: string extends PrepareDraft[F] ? F : never;
}[Exclude<keyof PrepareDraft, 'bell'>];

/** What each entry is called, beside it and where it is asked for. */
export const fieldNames: Readonly<Record<TextField, string>> = {
  name: 'Name of the run',
  chargeVolumeMl: 'Volume in the pot',
  chargeStrengthAbv: 'Strength',
  rigDescription: 'Still and column',
  plates: 'Plates of the column',
  heatW: 'Heat',
  stationPressure: 'Pressure the barometer shows here',
  seaLevelPressure: 'Pressure in the weather report',
  altitudeM: 'Altitude of this room',
  leastStrengthAbv: 'Least strength of the vapour',
  leastMeanStrengthAbv: 'Least strength of all collected',
  dripRateMlPerMin: 'Drip rate you aim for',
  firstFractionAmount: 'Counted once the head holds',
  reactionTimeS: 'Time you need to act',
};
