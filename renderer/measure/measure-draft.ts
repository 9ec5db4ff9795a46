import {
  benchUncertainty,
  densityKgPerM3,
  fail,
  liquidRanges,
  type MarkBody,
  markBodySchema,
  type NumberRange,
  type Result,
  succeed,
  type UncertaintyField,
} from '#shared-core';
import { numberFrom } from '../words/index.ts';

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
  volumeMl: { name: 'Volume', unit: 'mL' },
  massG: { name: 'Mass', unit: 'g' },
  alcoholByVolume: { name: 'Strength on the scale', unit: '% vol' },
  densityKgPerM3: { name: 'Density on the scale', unit: 'kg/m³' },
  temperatureC: { name: 'Temperature of the liquid', unit: '°C', isOptional: true },
  emptyG: { name: 'Pycnometer, empty and dry', unit: 'g' },
  withWaterG: { name: 'Filled with water', unit: 'g' },
  withSampleG: { name: 'Filled with the liquid', unit: 'g' },
  waterTemperatureC: { name: 'Temperature of the water', unit: '°C' },
  sampleTemperatureC: { name: 'Temperature of the liquid', unit: '°C' },
  percent: { name: 'Reading of the refractometer', unit: '%' },
};

/** An uncertainty that may be stated, and the reading it belongs to. */
interface UncertaintyLook {
  readonly name: string;
  readonly unit: string;
  readonly of: readonly MeasureField[];
}

export const uncertaintyLooks: Readonly<Record<UncertaintyField, UncertaintyLook>> = {
  volumeUncertaintyMl: { name: '± volume', unit: 'mL', of: ['volumeMl'] },
  massUncertaintyG: { name: '± mass', unit: 'g', of: ['massG'] },
  strengthUncertaintyAbv: { name: '± strength', unit: '% vol', of: ['alcoholByVolume'] },
  densityUncertaintyKgPerM3: { name: '± density', unit: 'kg/m³', of: ['densityKgPerM3'] },
  temperatureUncertaintyK: {
    name: '± temperature',
    unit: 'K',
    of: ['temperatureC', 'sampleTemperatureC'],
  },
  weighingUncertaintyG: { name: '± each weighing', unit: 'g', of: ['withSampleG'] },
  uncertaintyPercent: { name: '± reading', unit: '%', of: ['percent'] },
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
    name: 'Measuring cylinder',
    finds: 'the volume of all of it',
    type: 'liquid-volume',
    fields: ['volumeMl', 'temperatureC'],
    uncertainties: ['volumeUncertaintyMl', 'temperatureUncertaintyK'],
  },
  balance: {
    name: 'Balance',
    finds: 'the mass of all of it, without the vessel',
    type: 'liquid-mass',
    fields: ['massG'],
    uncertainties: ['massUncertaintyG'],
  },
  alcoholometer: {
    name: 'Alcoholometer',
    finds: 'the strength',
    type: 'liquid-strength',
    fields: ['alcoholByVolume', 'temperatureC'],
    uncertainties: ['strengthUncertaintyAbv', 'temperatureUncertaintyK'],
  },
  hydrometer: {
    name: 'Hydrometer',
    finds: 'the strength, from the density',
    type: 'liquid-density',
    fields: ['densityKgPerM3', 'temperatureC'],
    uncertainties: ['densityUncertaintyKgPerM3', 'temperatureUncertaintyK'],
  },
  pycnometer: {
    name: 'Pycnometer',
    finds: 'the strength, from the density',
    type: 'liquid-pycnometer',
    fields: ['emptyG', 'withWaterG', 'withSampleG', 'waterTemperatureC', 'sampleTemperatureC'],
    uncertainties: ['weighingUncertaintyG', 'temperatureUncertaintyK'],
  },
  flask: {
    name: 'Weighed flask',
    finds: 'the strength, from a known volume on a balance',
    type: 'sample-weighed',
    fields: ['massG', 'volumeMl', 'temperatureC'],
    uncertainties: ['massUncertaintyG', 'volumeUncertaintyMl', 'temperatureUncertaintyK'],
  },
  refractometer: {
    name: 'Refractometer',
    finds: `the strength, up to ${mostRefractometerAbv} % vol: above that ethanol bends light hardly more and then less again, and one reading stands for two strengths`,
    type: 'liquid-refractometer',
    fields: ['percent'],
    uncertainties: ['uncertaintyPercent'],
  },
  chromatograph: {
    name: 'Gas chromatograph',
    finds: 'the strength, against standards of known strength',
    type: 'liquid-chromatogram',
    fields: ['alcoholByVolume'],
    uncertainties: ['strengthUncertaintyAbv'],
  },
  label: {
    name: 'Label',
    finds: 'the strength that is printed there, which nobody here has measured',
    type: 'liquid-label',
    fields: ['alcoholByVolume'],
    uncertainties: ['strengthUncertaintyAbv'],
  },
};

/** The scale has to be stated: many refractometers show sugar, and none tells what it is dipped in. */
export const scaleNames: Readonly<Record<RefractometerScale | '', string>> = {
  '': 'Choose what is printed on it',
  volume: '% vol of ethanol in water at 20 °C',
  mass: '% of the mass, ethanol in water at 20 °C',
  sugar: '% sugar (Brix, Oechsle, Plato) or an index',
};

const scaleProblems: Readonly<Record<RefractometerScale | '', string | null>> = {
  '': 'Say what its scale shows.',
  volume: null,
  mass: null,
  sugar: 'Such a scale says nothing of ethanol by itself. Use a float or a flask on a balance.',
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
    else if (value === null) problems[field] = `A number of ${unit}.`;
    else values[field] = value;
  }
  for (const field of uncertainties) {
    const text = texts[field];
    const value = text === undefined ? assumedUncertainty(draft, field) : numberFrom(text.trim());
    if (value === null || value <= 0)
      problems[field] = `More than 0 ${uncertaintyLooks[field].unit}.`;
    else values[field] = value;
  }
  if (instrument === 'refractometer' && scaleProblems[scale]) problems.scale = scaleProblems[scale];
  if (Object.keys(problems).length > 0) return fail(problems);
  const ownScale = instrument === 'refractometer' ? { scale } : {};
  const mark = markBodySchema.safeParse({ type, liquid, ...values, ...ownScale });
  if (mark.success) return succeed(mark.data);
  for (const issue of mark.error.issues) {
    const field = [...fields, ...uncertainties].find((name) => name === issue.path[0]);
    if (field !== undefined) problems[field] = rangeWords[field] ?? 'No such value is possible.';
    if (field === 'percent' && (scale === 'volume' || scale === 'mass')) {
      const range = liquidRanges.refractometerPercent[scale];
      problems.percent = `${between(range, '%')}: above that use a float or a flask on a balance.`;
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

const between = ({ low, high }: NumberRange, unit: string) => `Between ${low} and ${high} ${unit}`;
const waterKgPerM3 = densityKgPerM3({ ethanolMassFraction: 0, temperatureC: 20 });

/** In the words of whoever stands at the bench; the limits are those of the mark's schema. */
const rangeWords: DraftProblems = {
  alcoholByVolume: `${between(liquidRanges.alcoholByVolume, '% vol')}.`,
  densityKgPerM3: `${between(liquidRanges.densityKgPerM3, 'kg/m³')}: water is ${waterKgPerM3.toFixed(0)}, not ${(waterKgPerM3 / 1000).toFixed(3)}.`,
  temperatureC: `${between(liquidRanges.temperatureC, '°C')}: let it cool first.`,
  waterTemperatureC: `${between(liquidRanges.temperatureC, '°C')}.`,
  sampleTemperatureC: `${between(liquidRanges.temperatureC, '°C')}: let it cool first.`,
};
