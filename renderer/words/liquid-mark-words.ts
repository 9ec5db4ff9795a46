import { assertNever, type MarkBody, say } from '#shared-core';
import { type Decimal, numberWords } from './number-words.ts';

type LiquidMark = Extract<MarkBody, { readonly liquid: string }>;

/** A liquid that is measured by itself, in words: `Residue`, `Cut 2`. */
export function liquidWords(liquid: string): string {
  if (liquid === 'residue') return say('Residue');
  if (liquid === 'hold-up') return say('Hold-up');
  return say('Cut {number}', { number: liquid.replace(/^cut-/, '') });
}

/** What was measured of a liquid, as lists of marks show it. */
export function liquidMarkWords(mark: LiquidMark, decimal: Decimal): string {
  const number = (value: number, decimals: number) => numberWords(value, decimals, decimal);
  const at = (temperatureC: number | null) =>
    temperatureC === null
      ? ''
      : ` ${say('at {temperature} °C', { temperature: number(temperatureC, 1) })}`;
  return `${liquidWords(mark.liquid)}: ${measured()}`;

  function measured(): string {
    switch (mark.type) {
      case 'liquid-volume':
        return `${number(mark.volumeMl, 1)} mL${at(mark.temperatureC)}`;
      case 'liquid-mass':
        return `${number(mark.massG, 2)} g`;
      case 'liquid-strength':
        return say('alcoholometer {alcoholByVolume} % vol{at}', {
          alcoholByVolume: number(mark.alcoholByVolume, 1),
          at: at(mark.temperatureC),
        });
      case 'liquid-density':
        return say('hydrometer {densityKgPerM3} kg/m³{at}', {
          densityKgPerM3: number(mark.densityKgPerM3, 1),
          at: at(mark.temperatureC),
        });
      case 'liquid-pycnometer':
        return say('pycnometer with {withSampleG} g{at}', {
          withSampleG: number(mark.withSampleG, 2),
          at: at(mark.sampleTemperatureC),
        });
      case 'sample-weighed':
        return say('{volume} mL weigh {massG} g{at}', {
          volume: number(mark.volumeMl, 1),
          massG: number(mark.massG, 2),
          at: at(mark.temperatureC),
        });
      default:
        return assertNever(mark);
    }
  }
}
