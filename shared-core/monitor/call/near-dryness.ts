import { cautionOf } from '../../cautions/index.ts';
import { worded } from '../../wording/index.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { heatOffAct, isHeating } from './heating.ts';

/** Least that must stay in the pot, for all one knows: a tenth of the charge; common practice, no source. */
const leastPotShare = 0.1;

export const nearDryness = {
  id: 'near-dryness',
  title: worded('Pot near dryness'),
  act: worded('{heatOffAct} now and let the pot cool.', { heatOffAct }),
  consequence: cautionOf('dryness').because,
  caution: 'drop-heat',
  priority: 'high',
  onDelayS: 0,
  offDelayS: 60,
  asksForHeatOff: true,
  isAnsweredByHeatOff: true,
  mayBeShelved: false,
  waitsForHead: false,
  lingers: true,
  condition: ({ facts }) => {
    const left = facts.forecast?.potVolumeMl ?? null;
    if (left === null || !isHeating(facts)) return false;
    return left.low < leastPotShare * facts.settings.charge.volumeMl;
  },
  reason: ({ forecast, settings }) => {
    const left = forecast?.potVolumeMl ?? null;
    const leftMl =
      left === null ? worded('a few') : `${left.low.toFixed(0)}–${left.high.toFixed(0)}`;
    return {
      because: worded(
        'Of the {volume} mL charge {left} mL are left in the pot by what was booked and estimated: that may be less than the tenth that must stay.',
        { volume: settings.charge.volumeMl, left: leftMl },
      ),
      wouldChangeIf: worded('A volume booked that shows more liquid left in the pot.'),
    };
  },
  sentence: () => worded('The pot may be close to running dry.'),
} as const satisfies AlarmDefinition;
