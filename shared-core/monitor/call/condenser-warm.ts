import { cautionOf } from '../../cautions/index.ts';
import { celsius } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { heatOffAct } from './heating.ts';

/** Cooling water leaves a condenser that works well below this; common practice, no source [°C]. */
const onC = 40;
const offC = 35;

export const condenserWarm = {
  id: 'condenser-warm',
  title: 'Condenser warm',
  act: `${heatOffAct} and restore the cooling water.`,
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
    because: `The condenser outlet is at ${condenserC === null ? 'an unknown temperature' : celsius(condenserC)}.`,
    wouldChangeIf: `The outlet cooling below ${offC} °C.`,
  }),
  sentence: () => 'The condenser is warm: vapour may escape.',
} as const satisfies AlarmDefinition;
