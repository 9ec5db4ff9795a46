import { assertNever, type MarkBody, proofSightWords, say, told } from '#shared-core';
import { liquidMarkWords } from './liquid-mark-words.ts';
import { type Decimal, numberWords } from './number-words.ts';
import { signs } from './signs.ts';

/** A mark in words, as the list under the strip shows it. */
export function markWords(mark: MarkBody, decimal: Decimal): string {
  const number = (value: number, decimals = 0) => numberWords(value, decimals, decimal);
  switch (mark.type) {
    case 'heat-on':
      return say('Heat on');
    case 'heat-eased':
      return say('Heat eased');
    case 'heat-off':
      return say('Heat off');
    case 'receiver-changed':
      return mark.volumeMl === null
        ? say('Receiver changed')
        : say('Receiver changed, {volume} mL in the old one', { volume: number(mark.volumeMl, 1) });
    case 'volume-read':
      return say('{volume} mL in the receiver', { volume: number(mark.volumeMl, 1) });
    case 'mass-read':
      return say('{massG} g in the receiver', { massG: number(mark.massG, 1) });
    case 'drops-counted':
      return say('{drops} drops a minute', { drops: number((60 * mark.count) / mark.overS) });
    case 'strength-read': {
      const at =
        mark.sampleTemperatureC === null
          ? ''
          : ` ${say('at {temperature} °C', { temperature: number(mark.sampleTemperatureC, 1) })}`;
      return say('{alcoholByVolume} % vol read{at}', {
        alcoholByVolume: number(mark.alcoholByVolume, 1),
        at,
      });
    }
    case 'pressure-read':
      return say('Air pressure {pressure} kPa', { pressure: number(mark.pressureKPa, 1) });
    case 'alarm-acknowledged':
      return say('Prompt acknowledged');
    case 'alarm-shelved':
      return say('Prompt put aside for {minutes} min', { minutes: number(mark.forS / 60) });
    case 'attention-answered':
      return say('At the still');
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
      return say('{sugarG} g of sugar in the ferment', { sugarG: number(mark.sugarG, 1) });
    case 'proof-burned':
      return say('Burned as proof: {volume} mL of cut {cut}, {proofSight} ({role})', {
        volume: number(mark.volumeMl, 1),
        cut: mark.cut,
        proofSight: told(proofSightWords[mark.seen]),
        role: mark.role === 'teacher' ? say('teacher') : say('technician'),
      });
    case 'note':
      return mark.text;
    case 'mark-withdrawn':
      return say('Mark withdrawn');
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
