import { assertNever, type MarkBody, proofSightWords } from '#shared-core';
import { liquidMarkWords } from './liquid-mark-words.ts';
import { type Decimal, numberWords } from './number-words.ts';
import { signs } from './signs.ts';

/** A mark in words, as the list under the strip shows it. */
export function markWords(mark: MarkBody, decimal: Decimal): string {
  const number = (value: number, decimals = 0) => numberWords(value, decimals, decimal);
  switch (mark.type) {
    case 'heat-on':
      return 'Heat on';
    case 'heat-eased':
      return 'Heat eased';
    case 'heat-off':
      return 'Heat off';
    case 'receiver-changed':
      return mark.volumeMl === null
        ? 'Receiver changed'
        : `Receiver changed, ${number(mark.volumeMl, 1)} mL in the old one`;
    case 'volume-read':
      return `${number(mark.volumeMl, 1)} mL in the receiver`;
    case 'mass-read':
      return `${number(mark.massG, 1)} g in the receiver`;
    case 'drops-counted':
      return `${number((60 * mark.count) / mark.overS)} drops a minute`;
    case 'strength-read': {
      const at =
        mark.sampleTemperatureC === null ? '' : ` at ${number(mark.sampleTemperatureC, 1)} °C`;
      return `${number(mark.alcoholByVolume, 1)} % vol read${at}`;
    }
    case 'pressure-read':
      return `Air pressure ${number(mark.pressureKPa, 1)} kPa`;
    case 'alarm-acknowledged':
      return 'Prompt acknowledged';
    case 'alarm-shelved':
      return `Prompt put aside for ${number(mark.forS / 60)} min`;
    case 'attention-answered':
      return 'At the still';
    case 'liquid-volume':
    case 'liquid-mass':
    case 'liquid-strength':
    case 'liquid-density':
    case 'liquid-pycnometer':
    case 'sample-weighed':
    case 'liquid-refractometer':
    case 'liquid-chromatogram':
    case 'liquid-label':
      return liquidMarkWords(mark, decimal);
    case 'sugar-known':
      return `${number(mark.sugarG, 1)} g of sugar in the ferment`;
    case 'proof-burned':
      return `Burned as proof: ${number(mark.volumeMl, 1)} mL of cut ${mark.cut}, ${proofSightWords[mark.seen]} (${mark.role})`;
    case 'note':
      return mark.text;
    case 'mark-withdrawn':
      return 'Mark withdrawn';
    default:
      return assertNever(mark);
  }
}

/** One letter or sign a mark is drawn with on the strip. */
export function markSign(mark: MarkBody): string {
  switch (mark.type) {
    case 'heat-on':
      return signs.heatOn;
    case 'heat-eased':
      return signs.heatEased;
    case 'heat-off':
      return signs.heatOff;
    case 'receiver-changed':
      return signs.receiverChanged;
    case 'note':
      return signs.note;
    default:
      return signs.mark;
  }
}
