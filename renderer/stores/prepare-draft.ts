import type { z } from 'zod';
import type { RunSettings } from '#shared-core';
import type { keptDraftSchema } from './kept-draft-schema.ts';

/** The form as typed. */
export interface PrepareDraft extends z.infer<typeof keptDraftSchema> {
  /** Checks confirmed so far, each with the role of who did. */
  readonly confirms: RunSettings['safetyConfirms'];
}

export type PressureFrom = PrepareDraft['pressureFrom'];
export type PressureUnit = PrepareDraft['pressureUnit'];
export type ProbeKind = PrepareDraft['probeKind'];
export type FirstFractionKind = PrepareDraft['firstFractionKind'];
export type StopKind = PrepareDraft['stopKind'];
export type Role = PrepareDraft['role'];
type Trial = PrepareDraft['trials'][number];

export const firstDraft: PrepareDraft = {
  name: '',
  chargeVolumeMl: '350',
  chargeStrengthAbv: '9',
  assumed: ['volume', 'strength', 'probe-kind'],
  chargeDoubtMl: '',
  chargeDoubtAbv: '',
  ferment: null,
  rigDescription: '',
  plates: '',
  heatW: '',
  pressureFrom: 'altitude',
  pressureUnit: 'hPa',
  stationPressure: '',
  seaLevelPressure: '',
  steamReading: '',
  steamTaken: null,
  altitudeM: '',
  probeKind: 'digital',
  correction: null,
  correctionOf: null,
  calibrationPoints: { ice: null, steam: null, device: null },
  leastStrengthAbv: '80',
  stopKind: 'strength',
  leastMeanStrengthAbv: '88',
  dripRateMlPerMin: '1',
  firstFractionKind: 'minutes',
  firstFractionAmount: '2',
  reactionTimeS: '45',
  role: 'teacher',
  bell: '',
  lessonScript: null,
  trials: [],
  confirms: [],
};

/** The draft with these checks confirmed now by the present role, or no longer confirmed. */
export function withConfirms(
  draft: PrepareDraft,
  checks: readonly string[],
  isDone: boolean,
  confirmedAtIso: string,
): PrepareDraft {
  const others = draft.confirms.filter(({ check }) => !checks.includes(check));
  const { role } = draft;
  const made = checks.map((check) => ({ check, role, confirmedAtIso }));
  return { ...draft, confirms: isDone ? [...others, ...made] : others };
}

/** The draft with what the present role says of a trial now, in place of what was said of it before. */
export function withTrial(
  { trials, role }: Pick<PrepareDraft, 'trials' | 'role'>,
  trial: Trial['trial'],
  worked: boolean,
  triedAtIso: string,
): Pick<PrepareDraft, 'trials'> {
  return {
    trials: [...trials.filter((one) => one.trial !== trial), { trial, worked, role, triedAtIso }],
  };
}
