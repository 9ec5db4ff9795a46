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
  /** With its uncertainty where one was written down, in the digits it was written with. */
  const read = (value: number, decimals: number, unit: string, uncertainty: number | undefined) =>
    uncertainty === undefined
      ? `${number(value, decimals)} ${unit}`
      : `(${number(value, decimals)} ± ${String(uncertainty).replace('.', decimal)}) ${unit}`;
  const at = (temperatureC: number | null) =>
    temperatureC === null
      ? ''
      : ` ${say('at {temperature} °C', { temperature: number(temperatureC, 1) })}`;
  return `${liquidWords(mark.liquid)}: ${measured()}`;

  function measured(): string {
    switch (mark.type) {
      case 'liquid-volume':
        return `${read(mark.volumeMl, 1, 'mL', mark.volumeUncertaintyMl)}${at(mark.temperatureC)}`;
      case 'liquid-mass':
        return read(mark.massG, 2, 'g', mark.massUncertaintyG);
      case 'liquid-strength':
        return say('alcoholometer {strength}{at}', {
          strength: read(mark.alcoholByVolume, 1, '% vol', mark.strengthUncertaintyAbv),
          at: at(mark.temperatureC),
        });
      case 'liquid-density':
        return say('hydrometer {density}{at}', {
          density: read(mark.densityKgPerM3, 1, 'kg/m³', mark.densityUncertaintyKgPerM3),
          at: at(mark.temperatureC),
        });
      case 'liquid-pycnometer':
        return say('pycnometer with {mass}{at}', {
          mass: read(mark.withSampleG, 2, 'g', mark.weighingUncertaintyG),
          at: at(mark.sampleTemperatureC),
        });
      case 'sample-weighed':
        return say('{volume} weigh {mass}{at}', {
          volume: read(mark.volumeMl, 1, 'mL', mark.volumeUncertaintyMl),
          mass: read(mark.massG, 2, 'g', mark.massUncertaintyG),
          at: at(mark.temperatureC),
        });
      case 'liquid-refractometer':
        return say('refractometer {reading}', {
          reading: read(
            mark.percent,
            1,
            mark.scale === 'volume' ? '% vol' : say('% of the mass'),
            mark.uncertaintyPercent,
          ),
        });
      case 'liquid-chromatogram':
        return say('gas chromatograph {strength}', {
          strength: read(mark.alcoholByVolume, 1, '% vol', mark.strengthUncertaintyAbv),
        });
      case 'liquid-label':
        return say('label {strength}', {
          strength: read(mark.alcoholByVolume, 1, '% vol', mark.strengthUncertaintyAbv),
        });
      default:
        return assertNever(mark);
    }
  }
}
