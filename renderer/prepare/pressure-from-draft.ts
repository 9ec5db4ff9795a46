import {
  fail,
  judgeBarometerEntry,
  type PressureSetting,
  type Result,
  stationPressure,
  succeed,
} from '#shared-core';
import { numberFrom } from '../words/index.ts';
import type { PrepareDraft } from './prepare-draft.ts';

/** The pressure on the still with a sentence about it, and a doubt where the entry looks wrong. */
export interface DraftPressure {
  readonly setting: PressureSetting;
  readonly sentence: string;
  readonly doubt: string | null;
}

export interface FieldProblem {
  readonly field: keyof PrepareDraft;
  readonly message: string;
}

export function pressureFromDraft(draft: PrepareDraft): Result<DraftPressure, FieldProblem> {
  const altitudeM = numberFrom(draft.altitudeM);
  const isAltitudeGood = altitudeM !== null && altitudeM >= -430 && altitudeM <= 4500;
  // Beside a barometer it may be left out, but what is there must be an altitude.
  const isNeeded = draft.pressureFrom !== 'barometer' || draft.altitudeM.trim() !== '';
  if (isNeeded && !isAltitudeGood) {
    return fail({ field: 'altitudeM', message: 'Metres above sea level, −430 to 4500.' });
  }
  const knownAltitudeM = isAltitudeGood ? altitudeM : null;
  if (draft.pressureFrom === 'altitude') {
    return succeed(settled({ kind: 'altitude', altitudeM: altitudeM ?? 0 }, knownAltitudeM, null));
  }
  const isSeaLevel = draft.pressureFrom === 'sea-level';
  const field = isSeaLevel ? 'seaLevelPressure' : 'stationPressure';
  const [low, high] = isSeaLevel ? [87, 109] : [60, 110];
  const pressureKPa = inKPa(draft[field], draft.pressureUnit);
  if (pressureKPa === null || pressureKPa < low || pressureKPa > high) {
    const scale = draft.pressureUnit === 'hPa' ? 10 : 1;
    const range = `${low * scale} to ${high * scale} ${draft.pressureUnit}`;
    return fail({ field, message: `A pressure from ${range}.` });
  }
  if (isSeaLevel) {
    const evidence = {
      kind: 'sea-level-report',
      seaLevelPressureKPa: pressureKPa,
      altitudeM: altitudeM ?? 0,
    } as const;
    return succeed(settled(evidence, knownAltitudeM, null));
  }
  const judgement =
    knownAltitudeM === null
      ? null
      : judgeBarometerEntry({ pressureKPa, altitudeM: knownAltitudeM });
  const doubt = judgement && judgement.kind !== 'plausible' ? judgement.sentence : null;
  return succeed(
    settled({ kind: 'barometer', stationPressureKPa: pressureKPa }, knownAltitudeM, doubt),
  );
}

function settled(
  evidence: Parameters<typeof stationPressure>[0],
  altitudeM: number | null,
  doubt: string | null,
): DraftPressure {
  const { pressureKPa, standardUncertaintyKPa, sentence } = stationPressure(evidence);
  const source = evidence.kind === 'altitude' ? 'altitude' : 'barometer';
  return {
    setting: { pressureKPa, standardUncertaintyKPa, source, altitudeM },
    sentence,
    doubt,
  };
}

function inKPa(text: string, unit: PrepareDraft['pressureUnit']): number | null {
  const value = numberFrom(text);
  return value === null ? null : unit === 'hPa' ? value / 10 : value;
}
