import {
  defaultRunSettings,
  fail,
  inDecimals,
  type NumberRange,
  type RequestBody,
  type Result,
  type RunSettings,
  requests,
  say,
  settingRanges,
  succeed,
} from '#shared-core';
import { type Decimal, numberFrom, numberWords } from '../words/index.ts';

type AssumedOfCharge = NonNullable<RunSettings['charge']['assumed']>[number];

const correctionSchema = requests['runs/correct'].body.shape.correction;

/** What a table does not tell of a run, as typed. */
export interface StatedDraft {
  readonly volumeMl: string;
  readonly strengthAbv: string;
  /** Standard uncertainties; empty for the usual ones. */
  readonly volumeDoubtMl: string;
  readonly strengthDoubtAbv: string;
  readonly pressureKPa: string;
  readonly rigDescription: string;
  readonly plates: string;
}

export const nothingStated: StatedDraft = {
  volumeMl: '',
  strengthAbv: '',
  volumeDoubtMl: '',
  strengthDoubtAbv: '',
  pressureKPa: '',
  rigDescription: '',
  plates: '',
};

export type Stated = Pick<RunSettings, 'charge' | 'pressure' | 'rig'>;
export type StatedProblems = Readonly<Partial<Record<keyof StatedDraft, string>>>;

/** What a run's settings say, as a person would type it. */
export function statedDraftOf(
  { charge, pressure, rig }: Pick<RunSettings, 'charge' | 'pressure' | 'rig'>,
  decimal: Decimal,
): StatedDraft {
  const typed = (value: number) => String(value).replace('.', decimal);
  const isAssumed = (part: AssumedOfCharge) => charge.assumed?.includes(part) === true;
  const { standardUncertaintyMl, standardUncertaintyAbv } = charge;
  return {
    volumeMl: typed(charge.volumeMl),
    strengthAbv: typed(charge.strengthAbv),
    // The doubt of what nobody stated is none of what will be stated in its place.
    volumeDoubtMl:
      standardUncertaintyMl === undefined || isAssumed('volume')
        ? ''
        : typed(standardUncertaintyMl),
    strengthDoubtAbv: isAssumed('strength') ? '' : typed(standardUncertaintyAbv),
    pressureKPa: numberWords(pressure.pressureKPa, 2, decimal),
    rigDescription: rig.description,
    plates: rig.plates === null ? '' : typed(rig.plates),
  };
}

/** Of a barometer read and written down [kPa]; chosen here. */
const statedPressureDoubtKPa = 0.3;

/** Charge, pressure and rig from what was typed, `known` for all that is not asked; or what is wrong, field by field. */
export function statedFrom(
  draft: StatedDraft,
  known: RunSettings,
  decimal: Decimal = '.',
): Result<Stated, StatedProblems> {
  const problems: { -readonly [F in keyof StatedDraft]?: string } = {};
  const read = (field: keyof StatedDraft, { low, high }: NumberRange, unit: string) => {
    const value = numberFrom(draft[field]);
    if (value !== null && value >= low && value <= high) return value;
    const typed = (end: number) => inDecimals(`${end}`, decimal);
    problems[field] = say('A number from {low} to {high}{unit}.', {
      low: typed(low),
      high: typed(high),
      unit,
    });
    return low;
  };
  const volumeMl = read('volumeMl', settingRanges.chargeVolumeMl, ' mL');
  const strengthAbv = read('strengthAbv', settingRanges.chargeStrengthAbv, ' % vol');
  const was = known.charge;
  // Left as it stands, without a doubt of its own, it is no statement.
  const assumed = (was.assumed ?? []).filter((part) =>
    part === 'volume'
      ? volumeMl === was.volumeMl && draft.volumeDoubtMl.trim() === ''
      : strengthAbv === was.strengthAbv && draft.strengthDoubtAbv.trim() === '',
  );
  const volumeDoubtMl =
    draft.volumeDoubtMl.trim() === ''
      ? assumed.includes('volume')
        ? was.standardUncertaintyMl
        : undefined
      : read('volumeDoubtMl', settingRanges.chargeDoubtMl, ' mL');
  const strengthDoubtAbv =
    draft.strengthDoubtAbv.trim() === ''
      ? (assumed.includes('strength') ? was : defaultRunSettings.charge).standardUncertaintyAbv
      : read('strengthDoubtAbv', settingRanges.chargeDoubtAbv, ' % vol');
  const pressureKPa = read('pressureKPa', settingRanges.pressureKPa, ' kPa');
  const plates = draft.plates.trim() === '' ? null : read('plates', settingRanges.plates, '');
  if (Object.keys(problems).length > 0) return fail(problems);
  const isSamePressure = Math.abs(pressureKPa - known.pressure.pressureKPa) < 0.005;
  const stated = {
    charge: {
      volumeMl,
      strengthAbv,
      standardUncertaintyAbv: strengthDoubtAbv,
      ...(volumeDoubtMl === undefined ? {} : { standardUncertaintyMl: volumeDoubtMl }),
      ...(assumed.length === 0 ? {} : { assumed }),
    },
    pressure: isSamePressure
      ? known.pressure
      : {
          pressureKPa,
          standardUncertaintyKPa: statedPressureDoubtKPa,
          source: 'barometer' as const,
          altitudeM: null,
        },
    rig: { ...known.rig, description: draft.rigDescription.trim().slice(0, 200), plates },
  };
  return succeed(stated);
}

/** The correction to send, only of what was changed; null where nothing was, or without a reason. The start: a new one or none. */
export function correctionOf(
  stated: Stated,
  known: RunSettings,
  reason: string,
  startedAtIso?: string,
): RequestBody<'runs/correct'>['correction'] | null {
  const isChanged = (part: keyof Stated) =>
    JSON.stringify(stated[part]) !== JSON.stringify(known[part]);
  const { charge, pressure, rig } = stated;
  const changed = {
    ...(isChanged('charge') ? { charge } : {}),
    ...(isChanged('pressure') ? { pressure } : {}),
    ...(isChanged('rig') ? { rig } : {}),
    ...(startedAtIso === undefined ? {} : { startedAtIso }),
  };
  if (Object.keys(changed).length === 0) return null;
  return correctionSchema.safeParse({ ...changed, reason }).data ?? null;
}
