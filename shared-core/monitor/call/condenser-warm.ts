import { cautionOf } from '../../cautions/index.ts';
import { worded } from '../../wording/index.ts';
import { celsius } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { heatOffAct } from './heating.ts';

/** Cooling water leaves a condenser that works well below this; common practice, no source [°C]. */
const onC = 40;
/** Clearly cooler again: at one bound the call would come and go [°C]; chosen here. */
const offC = 35;

export const condenserWarm = {
  id: 'condenser-warm',
  title: worded('Condenser warm'),
  act: worded('{heatOffAct} and restore the cooling water.', { heatOffAct }),
  consequence: cautionOf('cooling-water').because,
  caution: 'drop-heat',
  priority: 'high',
  onDelayS: 15,
  offDelayS: 30,
  asksForHeatOff: true,
  // Cooling water is not restored by it: whoever has read the prompt answers it.
  isAnsweredByHeatOff: false,
  mayBeShelved: false,
  waitsForHead: false,
  lingers: true,
  condition: ({ facts: { condenserC }, track }) =>
    condenserC !== null && condenserC > (track.active ? offC : onC),
  reason: ({ condenserC }) => ({
    because: worded('The condenser outlet is at {temperature}.', {
      temperature: condenserC === null ? worded('an unknown temperature') : celsius(condenserC),
    }),
    wouldChangeIf: worded('The outlet cooling below {off} °C.', { off: offC }),
  }),
  sentence: () => worded('The condenser is warm: vapour may escape.'),
} as const satisfies AlarmDefinition;
