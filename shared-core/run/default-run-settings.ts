import { usualChargeDoubtAbv } from './charge-doubt.ts';
import type { RunSettings } from './run-settings.ts';

/**
 * Settings for a first run: 350 mL of 9 % vol pear ferment at standard pressure, stop at 80 % vol.
 * A reaction time of 45 s, a first fraction of 2 min and an attention check every 15 min are common practice, no source.
 * Nobody has entered an air pressure: most schools stand below 1000 m (ISO 2533: 90 kPa).
 */
export const defaultRunSettings: RunSettings = {
  name: 'Pear-juice ferment',
  charge: { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: usualChargeDoubtAbv },
  rig: { description: '', plates: null, heatW: null, columnLossW: null },
  pressure: {
    pressureKPa: 101.325,
    standardUncertaintyKPa: 6,
    source: 'assumed',
    altitudeM: null,
  },
  probe: { standardUncertaintyK: 0.25, lagT90S: 15, offsetK: 0, gain: 1, silenceS: 5 },
  leastStrengthAbv: 80,
  stop: { kind: 'strength' },
  firstFraction: { kind: 'minutes', minutes: 2 },
  reactionTimeS: 45,
  attentionCheckS: 900,
  safetyConfirms: [],
};
