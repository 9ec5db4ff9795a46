import { assertNever, type MarkBody } from '#shared-core';
import { type Decimal, numberWords } from './number-words.ts';

type LiquidMark = Extract<MarkBody, { readonly liquid: string }>;

/** A liquid that is measured by itself, in words: `Residue`, `Cut 2`. */
export function liquidWords(liquid: string): string {
  if (liquid === 'residue') return 'Residue';
  if (liquid === 'hold-up') return 'Hold-up';
  return liquid.replace(/^cut-/, 'Cut ');
}

/** What was measured of a liquid, as lists of marks show it. */
export function liquidMarkWords(mark: LiquidMark, decimal: Decimal): string {
  const number = (value: number, decimals: number) => numberWords(value, decimals, decimal);
  const at = (temperatureC: number | null) =>
    temperatureC === null ? '' : ` at ${number(temperatureC, 1)} °C`;
  return `${liquidWords(mark.liquid)}: ${measured()}`;

  function measured(): string {
    switch (mark.type) {
      case 'liquid-volume':
        return `${number(mark.volumeMl, 1)} mL${at(mark.temperatureC)}`;
      case 'liquid-mass':
        return `${number(mark.massG, 2)} g`;
      case 'liquid-strength':
        return `alcoholometer ${number(mark.alcoholByVolume, 1)} % vol${at(mark.temperatureC)}`;
      case 'liquid-density':
        return `hydrometer ${number(mark.densityKgPerM3, 1)} kg/m³${at(mark.temperatureC)}`;
      case 'liquid-pycnometer':
        return `pycnometer with ${number(mark.withSampleG, 2)} g${at(mark.sampleTemperatureC)}`;
      case 'sample-weighed':
        return `${number(mark.volumeMl, 1)} mL weigh ${number(mark.massG, 2)} g${at(mark.temperatureC)}`;
      default:
        return assertNever(mark);
    }
  }
}
