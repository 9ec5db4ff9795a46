import { worded } from '../../wording/index.ts';
import { probeFaultWords } from '../sense/probe-fault.ts';
import type { VapourScale } from '../situation/vapour-scale.ts';
import { celsius, kelvin } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';

/** People distil up to some 3000 m; lower than that the air pressure explains nothing [kPa]. */
const lowestKPa = 68;

export const bulbDoubted = {
  id: 'bulb-doubted',
  title: worded('Bulb in doubt'),
  act: worded(
    'Check the air pressure entered and, by eye, the bulb; heat off and cold before you touch it.',
  ),
  consequence: worded('A bulb that reads too low has the heat-off call come late, or not at all.'),
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
      because: worded(
        'The head rested at {lowest}, {difference} below the azeotrope at {pressure} kPa ({azeotrope}), where no ethanol–water vapour condenses. {explanation}',
        {
          lowest: celsius(lowestC),
          difference: kelvin(scale.azeotropeC - lowestC),
          pressure: scale.pressureKPa.toFixed(1),
          azeotrope: celsius(scale.azeotropeC),
          explanation: explainedBy(scale, lowestC),
        },
      ),
      wouldChangeIf: worded(
        'The air pressure that is right entered, or a bulb that hangs in the vapour.',
      ),
    };
  },
  sentence: ({ doubt }) =>
    doubt === null
      ? worded('The head cannot be relied on.')
      : worded('The head cannot be relied on: {probeFault}.', {
          probeFault: probeFaultWords[doubt],
        }),
  // A doubt may last for the whole run: who has answered it hears of the run again.
  speaks: (_, state) => state !== 'acknowledged',
} as const satisfies AlarmDefinition;

/** What would explain so low a level: another air pressure, or a bulb and probe that read low. */
function explainedBy(scale: VapourScale, lowestC: number): string {
  const lowK = scale.azeotropeC - lowestC;
  const pressureKPa = scale.pressureKPa - lowK / scale.kelvinPerKPa;
  const byProbe = worded('a bulb that hangs badly or a probe that reads {low} low', {
    low: kelvin(lowK),
  });
  if (pressureKPa < lowestKPa) return worded('Likely is {byProbe}.', { byProbe });
  return worded('An air pressure of about {pressure} kPa would explain it, or {byProbe}.', {
    pressure: pressureKPa.toFixed(0),
    byProbe,
  });
}
