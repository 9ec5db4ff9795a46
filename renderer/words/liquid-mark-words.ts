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
  /** With its uncertainty where one was written down, in the digits it was written with. */
  const read = (value: number, decimals: number, unit: string, uncertainty: number | undefined) =>
    uncertainty === undefined
      ? `${number(value, decimals)} ${unit}`
      : `(${number(value, decimals)} ± ${String(uncertainty).replace('.', decimal)}) ${unit}`;
  const at = (temperatureC: number | null) =>
    temperatureC === null ? '' : ` at ${number(temperatureC, 1)} °C`;
  return `${liquidWords(mark.liquid)}: ${measured()}`;

  function measured(): string {
    switch (mark.type) {
      case 'liquid-volume':
        return `${read(mark.volumeMl, 1, 'mL', mark.volumeUncertaintyMl)}${at(mark.temperatureC)}`;
      case 'liquid-mass':
        return read(mark.massG, 2, 'g', mark.massUncertaintyG);
      case 'liquid-strength':
        return `alcoholometer ${read(mark.alcoholByVolume, 1, '% vol', mark.strengthUncertaintyAbv)}${at(mark.temperatureC)}`;
      case 'liquid-density':
        return `hydrometer ${read(mark.densityKgPerM3, 1, 'kg/m³', mark.densityUncertaintyKgPerM3)}${at(mark.temperatureC)}`;
      case 'liquid-pycnometer':
        return `pycnometer with ${read(mark.withSampleG, 2, 'g', mark.weighingUncertaintyG)}${at(mark.sampleTemperatureC)}`;
      case 'sample-weighed':
        return `${read(mark.volumeMl, 1, 'mL', mark.volumeUncertaintyMl)} weigh ${read(mark.massG, 2, 'g', mark.massUncertaintyG)}${at(mark.temperatureC)}`;
      case 'liquid-refractometer':
        return `refractometer ${read(mark.percent, 1, mark.scale === 'volume' ? '% vol' : '% of the mass', mark.uncertaintyPercent)}`;
      case 'liquid-chromatogram':
        return `gas chromatograph ${read(mark.alcoholByVolume, 1, '% vol', mark.strengthUncertaintyAbv)}`;
      case 'liquid-label':
        return `label ${read(mark.alcoholByVolume, 1, '% vol', mark.strengthUncertaintyAbv)}`;
      default:
        return assertNever(mark);
    }
  }
}
