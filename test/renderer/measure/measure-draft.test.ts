import { expect, test } from 'vitest';
import {
  type Instrument,
  instruments,
  type MeasureDraft,
  markFromDraft,
} from '../../../renderer/measure/measure-draft.ts';

const draft = (instrument: Instrument, texts: MeasureDraft['texts'], liquid = 'residue') =>
  markFromDraft({ liquid, instrument, texts });

test('every instrument gives its mark, with either decimal sign', () => {
  const texts = {
    volumeMl: '50,0',
    massG: '49.5',
    alcoholByVolume: '2,5',
    densityKgPerM3: '995.4',
    temperatureC: '21',
    emptyG: '30',
    withWaterG: '79.85',
    withSampleG: '79',
    waterTemperatureC: '20',
    sampleTemperatureC: '21',
  };
  const marks = instruments.map((instrument) => draft(instrument, texts, 'cut-2'));
  expect(marks.map((mark) => (mark.ok ? mark.value : mark.error))).toEqual([
    { type: 'liquid-volume', liquid: 'cut-2', volumeMl: 50, temperatureC: 21 },
    { type: 'liquid-mass', liquid: 'cut-2', massG: 49.5 },
    { type: 'liquid-strength', liquid: 'cut-2', alcoholByVolume: 2.5, temperatureC: 21 },
    { type: 'liquid-density', liquid: 'cut-2', densityKgPerM3: 995.4, temperatureC: 21 },
    {
      type: 'liquid-pycnometer',
      liquid: 'cut-2',
      emptyG: 30,
      withWaterG: 79.85,
      withSampleG: 79,
      waterTemperatureC: 20,
      sampleTemperatureC: 21,
    },
    { type: 'sample-weighed', liquid: 'cut-2', massG: 49.5, volumeMl: 50, temperatureC: 21 },
  ]);
});

test('an empty temperature stays unknown, any other empty field is asked for', () => {
  expect(draft('cylinder', { volumeMl: '320' })).toEqual({
    ok: true,
    value: { type: 'liquid-volume', liquid: 'residue', volumeMl: 320, temperatureC: null },
  });
  expect(draft('cylinder', { temperatureC: '20' })).toEqual({
    ok: false,
    error: { volumeMl: 'A number of mL.' },
  });
});

test('a density in g/mL and a hot liquid are refused with what to do', () => {
  expect(draft('hydrometer', { densityKgPerM3: '0.998', temperatureC: '85' })).toEqual({
    ok: false,
    error: {
      densityKgPerM3: 'Between 700 and 1100 kg/m³: water is 998, not 0.998.',
      temperatureC: 'Between 0 and 40 °C: let it cool first.',
    },
  });
});
