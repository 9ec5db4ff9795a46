import { massFractionFromAlcoholByVolume } from '../../alcoholometry/index.ts';
import type { VapourView } from '../../snapshot/index.ts';
import type { Estimate } from '../../uncertainty/index.ts';
import { worded } from '../../wording/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { fastestKPerS, type HeadStrength, headStrength, type Unsettled } from './head-strength.ts';
import { celsius, kelvin } from './numbers.ts';

/**
 * What the head vapour is, from temperature, pressure and the bias learned; null before vapour and after it.
 * `shown` is how much of the strength is told just now: less than is known where it has only just settled.
 */
export function vapourView(facts: MonitorFacts, shown: HeadStrength['kind']): VapourView | null {
  const { head, situation, scale, bias } = facts;
  if (head === null || situation.bathedS === null || facts.stage === 'cool-down') return null;
  const found = headStrength(facts);
  if (found.kind === 'unsettled' || shown === 'unsettled') {
    return unknown('unsettled', unsettledWords(found));
  }
  if (found.kind === 'below-azeotrope' || shown === 'below-azeotrope') {
    return unknown('below-azeotrope', belowAzeotropeWords(facts));
  }
  const { strength, sdK } = found;
  const flat = strength.high - strength.low > 4 && strength.value > 88;
  return {
    kind: head.vapourC - bias.meanK > scale.waterC + 2 * sdK ? 'above-water' : 'ethanol-water',
    alcoholByVolume: strength,
    ethanolMassPercent: massPercent(strength),
    explanation: flat
      ? worded('Near the azeotrope the temperature says little about the strength.')
      : worded(
          'Read from the temperature at which such vapour condenses at {pressure} kPa; the standard uncertainty of the temperature is {sd}.',
          { pressure: scale.pressureKPa.toFixed(1), sd: kelvin(sdK) },
        ),
  };
}

function unknown(kind: VapourView['kind'], explanation: string): VapourView {
  return { kind, alcoholByVolume: null, ethanolMassPercent: null, explanation };
}

const reasons: Readonly<Record<Unsettled, string>> = {
  'not-held': worded('No vapour has reached the bulb yet: it still warms up.'),
  receded: worded('No vapour reaches the bulb just now: what it shows is its own cooling.'),
  returned: worded('Vapour is back at the bulb, which needs some seconds to settle in it.'),
  moving: worded(
    'The head moves by more than {rate} K/min: the bulb lags too far behind the vapour.',
    { rate: (60 * fastestKPerS).toFixed(0) },
  ),
  cooling: worded(
    'The heat is off or the head sinks in the tail: vapour dies away, and the bulb shows its own cooling.',
  ),
  fault: worded('The probe is not trusted just now.'),
};

function unsettledWords(found: HeadStrength): string {
  return found.kind === 'unsettled'
    ? reasons[found.why]
    : worded(
        'The bulb has only just settled in the vapour: the strength is told once it has stayed so for half a minute.',
      );
}

function massPercent(strength: Estimate): Estimate {
  const convert = (alcoholByVolume: number): number =>
    100 * massFractionFromAlcoholByVolume({ alcoholByVolume });
  return {
    value: convert(strength.value),
    low: convert(strength.low),
    high: convert(strength.high),
  };
}

function belowAzeotropeWords({ scale }: MonitorFacts): string {
  return worded(
    "No ethanol–water vapour condenses below {azeotrope} at {pressure} kPa. See through the glass whether the bulb sits in the vapour at the side arm, then check the air pressure entered and the probe's correction; lighter volatiles are the rarer cause.",
    { azeotrope: celsius(scale.azeotropeC), pressure: scale.pressureKPa.toFixed(1) },
  );
}
