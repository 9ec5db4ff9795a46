import {
  defaultRunSettings,
  fail,
  judgeBarometerEntry,
  pressureFromSteam,
  type Result,
  type RunSettings,
  saidWords,
  say,
  settingRanges,
  stationPressure,
  succeed,
  told,
} from '#shared-core';
import type { PrepareDraft } from '../stores/index.ts';
import {
  type Decimal,
  mayHaveThousandsMark,
  numberFrom,
  numberWords,
  thousandsWords,
} from '../words/index.ts';
import { probeFromDraft } from './probe-from-draft.ts';
import { probeKinds } from './probe-kinds.ts';

/** The pressure on the still with a sentence about it, and a doubt where the entry looks wrong. */
export interface DraftPressure {
  readonly setting: RunSettings['pressure'];
  readonly sentence: string;
  readonly doubt: string | null;
}

export interface FieldProblem {
  readonly field: keyof PrepareDraft;
  readonly message: string;
}

/** Sea-level pressures beyond any weather ever reported, 87.0 and 108.5 kPa being the records (from memory). */
const seaLevelRangeKPa = { low: 87, high: 109 } as const;

/** The pressure on the still, or what is wrong with the entries it is made from: all of them at once. */
export function pressureFromDraft(
  draft: PrepareDraft,
  decimal: Decimal = '.',
): Result<DraftPressure, readonly FieldProblem[]> {
  const { pressureFrom } = draft;
  if (pressureFrom === 'unknown') {
    // Judged from wide ends, until the head itself tells more than any assumption.
    const { pressure } = defaultRunSettings;
    return succeed({
      setting: pressure,
      sentence: say('The air pressure is not known.'),
      doubt: null,
    });
  }
  const altitude = altitudeOf(draft);
  const problems = altitude.ok ? [] : [altitude.error];
  const altitudeM = altitude.ok ? altitude.value : null;
  if (pressureFrom === 'altitude') {
    if (altitudeM === null) return fail(problems);
    return succeed(settled({ kind: 'altitude', altitudeM }, altitudeM, null, decimal));
  }
  if (pressureFrom === 'steam') {
    const pressure = readSteam(draft, altitudeM, decimal);
    if (!pressure.ok) return fail([...problems, pressure.error]);
    return problems.length > 0 ? fail(problems) : pressure;
  }
  const pressure = readPressureKPa(draft, pressureFrom, decimal);
  if (!pressure.ok) return fail([...problems, pressure.error]);
  if (problems.length > 0) return fail(problems);
  const pressureKPa = pressure.value;
  if (pressureFrom === 'sea-level') {
    const evidence = {
      kind: 'sea-level-report',
      seaLevelPressureKPa: pressureKPa,
      altitudeM: altitudeM ?? 0,
    } as const;
    return succeed(settled(evidence, altitudeM, null, decimal));
  }
  const judgement = altitudeM === null ? null : judgeBarometerEntry({ pressureKPa, altitudeM });
  const doubt =
    judgement && judgement.kind !== 'plausible'
      ? saidWords(told(judgement.sentence), decimal)
      : null;
  const evidence = { kind: 'barometer', stationPressureKPa: pressureKPa } as const;
  return succeed(settled(evidence, altitudeM, doubt, decimal));
}

/** Beside a barometer and beside steam it may be left out (null), but what is there must be an altitude. */
function altitudeOf(draft: PrepareDraft): Result<number | null, FieldProblem> {
  const isBeside = draft.pressureFrom === 'barometer' || draft.pressureFrom === 'steam';
  if (isBeside && draft.altitudeM.trim() === '') return succeed(null);
  const field = 'altitudeM';
  if (draft.altitudeM.trim() === '') {
    return fail({
      field,
      message: say('Needed: metres above sea level, from a map. 0 at the coast.'),
    });
  }
  if (mayHaveThousandsMark(draft.altitudeM)) return fail({ field, message: thousandsWords });
  const altitudeM = numberFrom(draft.altitudeM);
  const { low, high } = settingRanges.altitudeM;
  return altitudeM !== null && altitudeM >= low && altitudeM <= high
    ? succeed(altitudeM)
    : fail({
        field,
        message: say('Metres above sea level, {low} to {high}.', {
          low: numberWords(low, 0, '.'),
          high,
        }),
      });
}

/** A number typed by hand was read off a display that steps by a tenth, watched for a while [K]; common practice, no source. */
const typedDoubtK = 0.05;

function readSteam(
  draft: PrepareDraft,
  altitudeM: number | null,
  decimal: Decimal,
): Result<DraftPressure, FieldProblem> {
  const field = 'steamReading';
  const { steamReading, steamTaken, probeKind } = draft;
  if (steamReading.trim() === '') {
    return fail({ field, message: say('Needed: what the probe shows in the steam.') });
  }
  const shownC = numberFrom(steamReading);
  if (shownC === null) return fail({ field, message: say('A temperature in °C.') });
  const pressure = pressureFromSteam(
    {
      shownC,
      standardUncertaintyK: steamTaken?.standardUncertaintyK ?? typedDoubtK,
      gapStandardUncertaintyK: probeKinds[probeKind].steamGapStandardUncertaintyK,
    },
    { probe: probeFromDraft(draft), altitudeM },
  );
  const inWords = (sentence: string) => saidWords(told(sentence), decimal);
  if (!pressure.ok) return fail({ field, message: inWords(pressure.error.sentence) });
  const { setting, sentence, doubt } = pressure.value;
  return succeed({
    setting,
    sentence: inWords(sentence),
    doubt: doubt === null ? null : inWords(doubt),
  });
}

function readPressureKPa(
  draft: PrepareDraft,
  pressureFrom: 'barometer' | 'sea-level',
  decimal: Decimal,
): Result<number, FieldProblem> {
  const isSeaLevel = pressureFrom === 'sea-level';
  const field = isSeaLevel ? 'seaLevelPressure' : 'stationPressure';
  if (draft[field].trim() === '') {
    const message = isSeaLevel
      ? say('Needed: from today’s report.')
      : say('Needed: what it shows today.');
    return fail({ field, message });
  }
  const { low, high } = isSeaLevel ? seaLevelRangeKPa : settingRanges.pressureKPa;
  if (draft.pressureUnit === 'hPa' && mayHaveThousandsMark(draft[field])) {
    return fail({ field, message: thousandsWords });
  }
  const pressureKPa = inKPa(draft[field], draft.pressureUnit);
  if (pressureKPa !== null && pressureKPa >= low && pressureKPa <= high) {
    return succeed(pressureKPa);
  }
  const scale = draft.pressureUnit === 'hPa' ? 10 : 1;
  return fail({
    field,
    message: say('A pressure from {low} to {high} {unit}.', {
      low: numberWords(low * scale, 0, decimal),
      high: numberWords(high * scale, 0, decimal),
      unit: draft.pressureUnit,
    }),
  });
}

function settled(
  evidence: Parameters<typeof stationPressure>[0],
  altitudeM: number | null,
  doubt: string | null,
  decimal: Decimal,
): DraftPressure {
  const { pressureKPa, standardUncertaintyKPa, sentence } = stationPressure(evidence);
  const source = evidence.kind === 'altitude' ? 'altitude' : 'barometer';
  return {
    setting: { pressureKPa, standardUncertaintyKPa, source, altitudeM },
    sentence: saidWords(told(sentence), decimal),
    doubt,
  };
}

function inKPa(text: string, unit: PrepareDraft['pressureUnit']): number | null {
  const value = numberFrom(text);
  return value === null ? null : unit === 'hPa' ? value / 10 : value;
}
