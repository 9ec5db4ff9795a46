import { massFractionFromAlcoholByVolume } from '../../alcoholometry/index.ts';
import type { Estimate, VapourView } from '../../snapshot/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { celsius, kelvin, vapourStrength } from './numbers.ts';

/** What the head vapour is, from temperature, pressure and the bias learned; null before vapour. */
export function vapourView(facts: MonitorFacts): VapourView | null {
  const { head, plateau, scale, bias } = facts;
  if (head === null || plateau.bathedS === null || facts.stage === 'cool-down') return null;
  const sdK = Math.hypot(head.vapourSdK, bias.sdK);
  const vapourC = head.vapourC - bias.meanK;
  if (vapourC < scale.azeotropeC - 2 * sdK - 0.1) {
    return {
      kind: 'below-azeotrope',
      alcoholByVolume: null,
      ethanolMassPercent: null,
      explanation: belowAzeotropeWords(facts),
    };
  }
  const strength = vapourStrength(scale, vapourC, sdK);
  const flat = strength.high - strength.low > 4 && strength.value > 88;
  return {
    kind: vapourC > scale.waterC + 2 * sdK ? 'above-water' : 'ethanol-water',
    alcoholByVolume: strength,
    ethanolMassPercent: massPercent(strength),
    explanation: flat
      ? 'Near the azeotrope the temperature says little about the strength.'
      : `Dew point at ${scale.pressureKPa.toFixed(1)} kPa, ${kelvin(sdK)} standard uncertainty.`,
  };
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

function belowAzeotropeWords({ head, plateau, scale }: MonitorFacts): string {
  const steady = head !== null && Math.abs(head.rateKPerS) < 0.01;
  const start = `No ethanol–water vapour condenses below ${celsius(scale.azeotropeC)} at ${scale.pressureKPa.toFixed(1)} kPa`;
  if (plateau.recededSinceS !== null || !steady) {
    return `${start}: the bulb is not fully bathed in vapour, or still lags.`;
  }
  return `${start}: check the air pressure entered and the probe's calibration; lighter volatiles are the rarer cause.`;
}
