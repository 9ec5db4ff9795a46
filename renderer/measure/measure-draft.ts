import {
  benchUncertainty,
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

/** A standard uncertainty as a mark of a measurement holds it. */
export type UncertaintyField = Parameters<typeof benchUncertainty>[0]['field'];

const mostRefractometerAbv = liquidRanges.refractometerPercent.volume.high;

/** Ways to measure a liquid, named for the instrument in the hand. */
export const instruments = [
  'cylinder',
  'balance',
  'alcoholometer',
  'hydrometer',
  'pycnometer',
  'flask',
  'refractometer',
  'chromatograph',
  'label',
] as const;

export type Instrument = (typeof instruments)[number];

/** What the person typed; texts, so that nothing is lost on the way. */
export interface MeasureDraft {
  readonly liquid: string;
  readonly instrument: Instrument;
  readonly texts: Readonly<Partial<Record<MeasureField | UncertaintyField, string>>>;
  /** What the scale of a refractometer shows; empty until somebody has said it. */
  readonly scale?: RefractometerScale | '' | undefined;
}

export type RefractometerScale = 'volume' | 'mass' | 'sugar';

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
  | 'sampleTemperatureC'
  | 'percent';

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
  percent: { name: say('Reading of the refractometer'), unit: '%' },
};

/** An uncertainty that may be stated, and the reading it belongs to. */
interface UncertaintyLook {
  readonly name: string;
  readonly unit: string;
  readonly of: readonly MeasureField[];
}

export const uncertaintyLooks: Readonly<Record<UncertaintyField, UncertaintyLook>> = {
  volumeUncertaintyMl: { name: say('± volume'), unit: 'mL', of: ['volumeMl'] },
  massUncertaintyG: { name: say('± mass'), unit: 'g', of: ['massG'] },
  strengthUncertaintyAbv: { name: say('± strength'), unit: '% vol', of: ['alcoholByVolume'] },
  densityUncertaintyKgPerM3: { name: say('± density'), unit: 'kg/m³', of: ['densityKgPerM3'] },
  temperatureUncertaintyK: {
    name: say('± temperature'),
    unit: 'K',
    of: ['temperatureC', 'sampleTemperatureC'],
  },
  weighingUncertaintyG: { name: say('± each weighing'), unit: 'g', of: ['withSampleG'] },
  uncertaintyPercent: { name: say('± reading'), unit: '%', of: ['percent'] },
};

interface InstrumentLook {
  readonly name: string;
  readonly finds: string;
  readonly type: MarkBody['type'];
  readonly fields: readonly MeasureField[];
  readonly uncertainties: readonly UncertaintyField[];
}

export const instrumentLooks: Readonly<Record<Instrument, InstrumentLook>> = {
  cylinder: {
    name: say('Measuring cylinder'),
    finds: say('the volume of all of it'),
    type: 'liquid-volume',
    fields: ['volumeMl', 'temperatureC'],
    uncertainties: ['volumeUncertaintyMl', 'temperatureUncertaintyK'],
  },
  balance: {
    name: say('Balance'),
    finds: say('the mass of all of it, without the vessel'),
    type: 'liquid-mass',
    fields: ['massG'],
    uncertainties: ['massUncertaintyG'],
  },
  alcoholometer: {
    name: say('Alcoholometer'),
    finds: say('the strength'),
    type: 'liquid-strength',
    fields: ['alcoholByVolume', 'temperatureC'],
    uncertainties: ['strengthUncertaintyAbv', 'temperatureUncertaintyK'],
  },
  hydrometer: {
    name: say('Hydrometer'),
    finds: say('the strength, from the density'),
    type: 'liquid-density',
    fields: ['densityKgPerM3', 'temperatureC'],
    uncertainties: ['densityUncertaintyKgPerM3', 'temperatureUncertaintyK'],
  },
  pycnometer: {
    name: say('Pycnometer'),
    finds: say('the strength, from the density'),
    type: 'liquid-pycnometer',
    fields: ['emptyG', 'withWaterG', 'withSampleG', 'waterTemperatureC', 'sampleTemperatureC'],
    uncertainties: ['weighingUncertaintyG', 'temperatureUncertaintyK'],
  },
  flask: {
    name: say('Weighed flask'),
    finds: say('the strength, from a known volume on a balance'),
    type: 'sample-weighed',
    fields: ['massG', 'volumeMl', 'temperatureC'],
    uncertainties: ['massUncertaintyG', 'volumeUncertaintyMl', 'temperatureUncertaintyK'],
  },
  refractometer: {
    name: say('Refractometer'),
    finds: say(
      'the strength, up to {mostRefractometer} % vol: above that ethanol bends light hardly more and then less again, and one reading stands for two strengths',
      { mostRefractometer: mostRefractometerAbv },
    ),
    type: 'liquid-refractometer',
    fields: ['percent'],
    uncertainties: ['uncertaintyPercent'],
  },
  chromatograph: {
    name: say('Gas chromatograph'),
    finds: say('the strength, against standards of known strength'),
    type: 'liquid-chromatogram',
    fields: ['alcoholByVolume'],
    uncertainties: ['strengthUncertaintyAbv'],
  },
  label: {
    name: say('Label'),
    finds: say('the strength that is printed there, which nobody here has measured'),
    type: 'liquid-label',
    fields: ['alcoholByVolume'],
    uncertainties: ['strengthUncertaintyAbv'],
  },
};

/** The scale has to be stated: many refractometers show sugar, and none tells what it is dipped in. */
export const scaleNames: Readonly<Record<RefractometerScale | '', string>> = {
  '': say('Choose what is printed on it'),
  volume: say('% vol of ethanol in water at 20 °C'),
  mass: say('% of the mass, ethanol in water at 20 °C'),
  sugar: say('% sugar (Brix, Oechsle, Plato) or an index'),
};

const scaleProblems: Readonly<Record<RefractometerScale | '', string | null>> = {
  '': say('Say what its scale shows.'),
  volume: null,
  mass: null,
  sugar: say(
    'Such a scale says nothing of ethanol by itself. Use a float or a flask on a balance.',
  ),
};

export type DraftProblems = Readonly<
  Partial<Record<MeasureField | UncertaintyField | 'scale', string>>
>;

/** The mark that a draft stands for, or what is wrong with each field. */
export function markFromDraft(draft: MeasureDraft): Result<MarkBody, DraftProblems> {
  const { liquid, instrument, texts, scale = '' } = draft;
  const { type, fields, uncertainties } = instrumentLooks[instrument];
  const problems: { -readonly [field in keyof DraftProblems]: string } = {};
  const values: Partial<Record<MeasureField | UncertaintyField, number | null>> = {};
  for (const field of fields) {
    const text = texts[field]?.trim() ?? '';
    const { isOptional = false, unit } = fieldLooks[field];
    const value = numberFrom(text);
    if (text === '' && isOptional) values[field] = null;
    else if (value === null) problems[field] = say('A number of {unit}.', { unit });
    else values[field] = value;
  }
  for (const field of uncertainties) {
    const text = texts[field];
    const value = text === undefined ? assumedUncertainty(draft, field) : numberFrom(text.trim());
    if (value === null || value <= 0)
      problems[field] = say('More than 0 {unit}.', { unit: uncertaintyLooks[field].unit });
    else values[field] = value;
  }
  if (instrument === 'refractometer' && scaleProblems[scale]) problems.scale = scaleProblems[scale];
  if (Object.keys(problems).length > 0) return fail(problems);
  const ownScale = instrument === 'refractometer' ? { scale } : {};
  const mark = markBodySchema.safeParse({ type, liquid, ...values, ...ownScale });
  if (mark.success) return succeed(mark.data);
  for (const issue of mark.error.issues) {
    const field = [...fields, ...uncertainties].find((name) => name === issue.path[0]);
    if (field !== undefined)
      problems[field] = rangeWords[field] ?? say('No such value is possible.');
    if (field === 'percent' && (scale === 'volume' || scale === 'mass')) {
      const range = liquidRanges.refractometerPercent[scale];
      problems.percent = say('{between}: above that use a float or a flask on a balance.', {
        between: between(range, '%'),
      });
    }
  }
  return fail(problems);
}

/** The amount that is more than went into the pot; a gram of it is a millilitre at least. */
export function fieldBeyondCharge(mark: MarkBody, chargeMl: number): MeasureField | null {
  if (mark.type === 'liquid-volume' && mark.volumeMl > chargeMl) return 'volumeMl';
  if (mark.type === 'liquid-mass' && mark.massG > chargeMl) return 'massG';
  return null;
}

/** Another instrument is doubted in its own way. */
export function withInstrument(draft: MeasureDraft, instrument: Instrument): MeasureDraft {
  const texts = Object.fromEntries(
    Object.entries(draft.texts).filter(([field]) => field in fieldLooks),
  );
  return { ...draft, instrument, texts };
}

/** What will be kept as the uncertainty of a reading unless another is typed: always shown, never hidden. */
export function assumedUncertainty(
  { instrument, texts }: MeasureDraft,
  field: UncertaintyField,
): number {
  const { type, fields } = instrumentLooks[instrument];
  const of = fields.find((name) => uncertaintyLooks[field].of.includes(name));
  const value = of === undefined ? null : numberFrom(texts[of]?.trim() ?? '');
  // Two digits are more than anybody knows of a doubt.
  return Number(benchUncertainty({ type, field, value }).toPrecision(2));
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
