import {
  densityKgPerM3,
  fail,
  liquidRanges,
  type MarkBody,
  markBodySchema,
  type NumberRange,
  type Result,
  say,
  succeed,
} from '#shared-core';
import { numberFrom } from '../words/index.ts';

/** Ways to measure a liquid, named for the instrument in the hand. */
export const instruments = [
  'cylinder',
  'balance',
  'alcoholometer',
  'hydrometer',
  'pycnometer',
  'flask',
] as const;

export type Instrument = (typeof instruments)[number];

/** What the person typed; texts, so that nothing is lost on the way. */
export interface MeasureDraft {
  readonly liquid: string;
  readonly instrument: Instrument;
  readonly texts: Readonly<Partial<Record<MeasureField, string>>>;
}

export type MeasureField =
  | 'volumeMl'
  | 'massG'
  | 'alcoholByVolume'
  | 'densityKgPerM3'
  | 'temperatureC'
  | 'emptyG'
  | 'withWaterG'
  | 'withSampleG'
  | 'waterTemperatureC'
  | 'sampleTemperatureC';

interface FieldLook {
  readonly name: string;
  readonly unit: string;
  readonly isOptional?: boolean;
}

export const fieldLooks: Readonly<Record<MeasureField, FieldLook>> = {
  volumeMl: { name: say('Volume'), unit: 'mL' },
  massG: { name: say('Mass'), unit: 'g' },
  alcoholByVolume: { name: say('Strength on the scale'), unit: '% vol' },
  densityKgPerM3: { name: say('Density on the scale'), unit: 'kg/m³' },
  temperatureC: { name: say('Temperature of the liquid'), unit: '°C', isOptional: true },
  emptyG: { name: say('Pycnometer, empty and dry'), unit: 'g' },
  withWaterG: { name: say('Filled with water'), unit: 'g' },
  withSampleG: { name: say('Filled with the liquid'), unit: 'g' },
  waterTemperatureC: { name: say('Temperature of the water'), unit: '°C' },
  sampleTemperatureC: { name: say('Temperature of the liquid'), unit: '°C' },
};

interface InstrumentLook {
  readonly name: string;
  readonly finds: string;
  readonly type: MarkBody['type'];
  readonly fields: readonly MeasureField[];
}

export const instrumentLooks: Readonly<Record<Instrument, InstrumentLook>> = {
  cylinder: {
    name: say('Measuring cylinder'),
    finds: say('the volume of all of it'),
    type: 'liquid-volume',
    fields: ['volumeMl', 'temperatureC'],
  },
  balance: {
    name: say('Balance'),
    finds: say('the mass of all of it, without the vessel'),
    type: 'liquid-mass',
    fields: ['massG'],
  },
  alcoholometer: {
    name: say('Alcoholometer'),
    finds: say('the strength'),
    type: 'liquid-strength',
    fields: ['alcoholByVolume', 'temperatureC'],
  },
  hydrometer: {
    name: say('Hydrometer'),
    finds: say('the strength, from the density'),
    type: 'liquid-density',
    fields: ['densityKgPerM3', 'temperatureC'],
  },
  pycnometer: {
    name: say('Pycnometer'),
    finds: say('the strength, from the density'),
    type: 'liquid-pycnometer',
    fields: ['emptyG', 'withWaterG', 'withSampleG', 'waterTemperatureC', 'sampleTemperatureC'],
  },
  flask: {
    name: say('Weighed flask'),
    finds: say('the strength, from a known volume on a balance'),
    type: 'sample-weighed',
    fields: ['massG', 'volumeMl', 'temperatureC'],
  },
};

export type DraftProblems = Readonly<Partial<Record<MeasureField, string>>>;

/** The mark that a draft stands for, or what is wrong with each field. */
export function markFromDraft({
  liquid,
  instrument,
  texts,
}: MeasureDraft): Result<MarkBody, DraftProblems> {
  const { type, fields } = instrumentLooks[instrument];
  const problems: Partial<Record<MeasureField, string>> = {};
  const values: Partial<Record<MeasureField, number | null>> = {};
  for (const field of fields) {
    const text = texts[field]?.trim() ?? '';
    const { isOptional = false, unit } = fieldLooks[field];
    const value = numberFrom(text);
    if (text === '' && isOptional) values[field] = null;
    else if (value === null) problems[field] = say('A number of {unit}.', { unit });
    else values[field] = value;
  }
  if (Object.keys(problems).length > 0) return fail(problems);
  const mark = markBodySchema.safeParse({ type, liquid, ...values });
  if (mark.success) return succeed(mark.data);
  for (const issue of mark.error.issues) {
    const field = fields.find((name) => name === issue.path[0]);
    if (field !== undefined)
      problems[field] = rangeWords[field] ?? say('No such value is possible.');
  }
  return fail(problems);
}

/** The amount that is more than went into the pot; a gram of it is a millilitre at least. */
export function fieldBeyondCharge(mark: MarkBody, chargeMl: number): MeasureField | null {
  if (mark.type === 'liquid-volume' && mark.volumeMl > chargeMl) return 'volumeMl';
  if (mark.type === 'liquid-mass' && mark.massG > chargeMl) return 'massG';
  return null;
}

const between = ({ low, high }: NumberRange, unit: string) =>
  say('Between {low} and {high} {unit}', { low, high, unit });
const waterKgPerM3 = densityKgPerM3({ ethanolMassFraction: 0, temperatureC: 20 });

/** In the words of whoever stands at the bench; the limits are those of the mark's schema. */
const rangeWords: DraftProblems = {
  alcoholByVolume: `${between(liquidRanges.alcoholByVolume, '% vol')}.`,
  densityKgPerM3: say('{between}: water is {waterKgPerM3}, not {waterKgPerM32}.', {
    between: between(liquidRanges.densityKgPerM3, 'kg/m³'),
    waterKgPerM3: waterKgPerM3.toFixed(0),
    waterKgPerM32: (waterKgPerM3 / 1000).toFixed(3),
  }),
  temperatureC: say('{between}: let it cool first.', {
    between: between(liquidRanges.temperatureC, '°C'),
  }),
  waterTemperatureC: `${between(liquidRanges.temperatureC, '°C')}.`,
  sampleTemperatureC: say('{between}: let it cool first.', {
    between: between(liquidRanges.temperatureC, '°C'),
  }),
};
