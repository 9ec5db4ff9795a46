import { probeFaultWords } from '../sense/probe-fault.ts';
import type { VapourScale } from '../situation/vapour-scale.ts';
import { celsius, kelvin } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';

/** People distil up to some 3000 m; lower than that the air pressure explains nothing [kPa]. */
const lowestKPa = 68;

export const bulbDoubted = {
  id: 'bulb-doubted',
  title: 'Bulb in doubt',
  act: 'Check the air pressure entered and, by eye, the bulb; heat off and cold before you touch it.',
  consequence: 'A bulb that reads too low has the heat-off call come late, or not at all.',
  caution: 'hot-head',
  priority: 'medium',
  onDelayS: 0,
  offDelayS: 5,
  asksForHeatOff: false,
  isAnsweredByHeatOff: false,
  mayBeShelved: true,
  waitsForHead: false,
  lingers: false,
  condition: ({ facts }) => facts.stage !== 'cool-down' && facts.doubt !== null,
  occurrence: (facts) => {
    const { doubt } = facts;
    return doubt === null ? null : { key: doubt, isRepeat: false };
  },
  reason: (facts) => {
    const { scale, situation } = facts;
    const lowestC = situation.lowestLaterC ?? situation.lowestLevelC ?? scale.azeotropeC;
    return {
      because: `The head rested at ${celsius(lowestC)}, ${kelvin(scale.azeotropeC - lowestC)} below the azeotrope at ${scale.pressureKPa.toFixed(1)} kPa (${celsius(scale.azeotropeC)}), where no ethanol–water vapour condenses. ${explainedBy(scale, lowestC)}`,
      wouldChangeIf: 'The air pressure that is right entered, or a bulb that hangs in the vapour.',
    };
  },
  sentence: ({ doubt }) =>
    doubt === null
      ? 'The head cannot be relied on.'
      : `The head cannot be relied on: ${probeFaultWords[doubt]}.`,
  // A doubt may last for the whole run: who has answered it hears of the run again.
  speaks: (_, state) => state !== 'acknowledged',
} as const satisfies AlarmDefinition;

/** What would explain so low a level: another air pressure, or a bulb and probe that read low. */
function explainedBy(scale: VapourScale, lowestC: number): string {
  const lowK = scale.azeotropeC - lowestC;
  const pressureKPa = scale.pressureKPa - lowK / scale.kelvinPerKPa;
  const byProbe = `a bulb that hangs badly or a probe that reads ${kelvin(lowK)} low`;
  if (pressureKPa < lowestKPa) return `Likely is ${byProbe}.`;
  return `An air pressure of about ${pressureKPa.toFixed(0)} kPa would explain it, or ${byProbe}.`;
}
