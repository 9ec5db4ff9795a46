import { say } from '#shared-core';
import type { PrepareDraft } from '../stores/index.ts';

/** Entries that are typed. */
export type TextField = {
  [F in Exclude<keyof PrepareDraft, 'bell'>]: [string, PrepareDraft[F]] extends [
    PrepareDraft[F],
    string,
  ]
    ? F
    : never;
}[Exclude<keyof PrepareDraft, 'bell'>];

/** What each entry is called, beside it and where it is asked for. */
export const fieldNames: Readonly<Record<TextField, string>> = {
  name: say('Name of the run'),
  chargeVolumeMl: say('Volume in the pot'),
  chargeStrengthAbv: say('Strength'),
  chargeDoubtMl: say('Uncertainty of the volume'),
  chargeDoubtAbv: say('Uncertainty of the strength'),
  rigDescription: say('Still and column'),
  plates: say('Plates of the column'),
  heatW: say('Heat'),
  stationPressure: say('Pressure the barometer shows here'),
  seaLevelPressure: say('Pressure in the weather report'),
  steamReading: say('What the probe shows in the steam'),
  altitudeM: say('Altitude of this room'),
  leastStrengthAbv: say('Least strength of the vapour'),
  leastMeanStrengthAbv: say('Least strength of all collected'),
  dripRateMlPerMin: say('Drip rate you aim for'),
  firstFractionAmount: say('Counted once the head holds'),
  reactionTimeS: say('Time you need to act'),
};
