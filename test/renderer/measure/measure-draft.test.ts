import { expect, test } from 'vitest';
import {
  type Instrument,
  instruments,
  type MeasureDraft,
  markFromDraft,
  withInstrument,
} from '../../../renderer/measure/measure-draft.ts';

const draft = (instrument: Instrument, texts: MeasureDraft['texts'], liquid = 'residue') =>
  markFromDraft({ liquid, instrument, texts, scale: 'volume' });

test('every instrument gives its mark with the uncertainties that it shows, with either decimal sign', () => {
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
    percent: '40,2',
  };
  const warm = { temperatureUncertaintyK: 0.5 };
  const marks = instruments.map((instrument) => draft(instrument, texts, 'cut-2'));
  expect(marks.map((mark) => (mark.ok ? mark.value : mark.error))).toEqual([
    {
      type: 'liquid-volume',
      liquid: 'cut-2',
      volumeMl: 50,
      temperatureC: 21,
      volumeUncertaintyMl: 0.56,
      ...warm,
    },
    { type: 'liquid-mass', liquid: 'cut-2', massG: 49.5, massUncertaintyG: 0.05 },
    {
      type: 'liquid-strength',
      liquid: 'cut-2',
      alcoholByVolume: 2.5,
      temperatureC: 21,
      strengthUncertaintyAbv: 0.5,
      ...warm,
    },
    {
      type: 'liquid-density',
      liquid: 'cut-2',
      densityKgPerM3: 995.4,
      temperatureC: 21,
      densityUncertaintyKgPerM3: 1,
      ...warm,
    },
    {
      type: 'liquid-pycnometer',
      liquid: 'cut-2',
      emptyG: 30,
      withWaterG: 79.85,
      withSampleG: 79,
      waterTemperatureC: 20,
      sampleTemperatureC: 21,
      weighingUncertaintyG: 0.02,
      ...warm,
    },
    {
      type: 'sample-weighed',
      liquid: 'cut-2',
      massG: 49.5,
      volumeMl: 50,
      temperatureC: 21,
      massUncertaintyG: 0.05,
      volumeUncertaintyMl: 0.1,
      ...warm,
    },
    {
      type: 'liquid-refractometer',
      liquid: 'cut-2',
      scale: 'volume',
      percent: 40.2,
      uncertaintyPercent: 1,
    },
    {
      type: 'liquid-chromatogram',
      liquid: 'cut-2',
      alcoholByVolume: 2.5,
      strengthUncertaintyAbv: 0.3,
    },
    { type: 'liquid-label', liquid: 'cut-2', alcoholByVolume: 2.5, strengthUncertaintyAbv: 0.3 },
  ]);
});

test('an empty temperature stays unknown, any other empty field is asked for', () => {
  expect(draft('cylinder', { volumeMl: '320' })).toEqual({
    ok: true,
    value: {
      type: 'liquid-volume',
      liquid: 'residue',
      volumeMl: 320,
      temperatureC: null,
      volumeUncertaintyMl: 1.7,
      temperatureUncertaintyK: 2,
    },
  });
  expect(draft('cylinder', { temperatureC: '20' })).toEqual({
    ok: false,
    error: { volumeMl: 'A number of mL.' },
  });
});

test('an uncertainty that is typed takes the place of the one shown; none at all is asked about', () => {
  expect(draft('balance', { massG: '310', massUncertaintyG: '0,5' })).toMatchObject({
    ok: true,
    value: { massUncertaintyG: 0.5 },
  });
  for (const massUncertaintyG of ['', '0', '-1', 'little']) {
    expect(draft('balance', { massG: '310', massUncertaintyG })).toEqual({
      ok: false,
      error: { massUncertaintyG: 'More than 0 g.' },
    });
  }
});

test('what one instrument was doubted by is not said of the next', () => {
  const typed = {
    liquid: 'residue',
    instrument: 'alcoholometer',
    texts: { alcoholByVolume: '40', strengthUncertaintyAbv: '2' },
  } as const;
  expect(withInstrument(typed, 'label').texts).toEqual({ alcoholByVolume: '40' });
});

test('a refractometer is read only where its scale was stated and says something of ethanol', () => {
  const read = (scale: MeasureDraft['scale'], percent: string) =>
    markFromDraft({ liquid: 'residue', instrument: 'refractometer', texts: { percent }, scale });
  expect([read('', '40'), read('sugar', '12'), read('volume', '90'), read('mass', '75')]).toEqual([
    { ok: false, error: { scale: 'Say what its scale shows.' } },
    {
      ok: false,
      error: {
        scale:
          'Such a scale says nothing of ethanol by itself. Use a float or a flask on a balance.',
      },
    },
    {
      ok: false,
      error: { percent: 'Between 0 and 80 %: above that use a float or a flask on a balance.' },
    },
    {
      ok: false,
      error: { percent: 'Between 0 and 73 %: above that use a float or a flask on a balance.' },
    },
  ]);
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
