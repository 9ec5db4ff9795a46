import { type LessonScript, type RunSettings, type SetUp, say } from '#shared-core';

export type PressureFrom = SetUp['pressureFrom'];
export type PressureUnit = SetUp['pressureUnit'];
export type ProbeKind = SetUp['probeKind'];
export type FirstFractionKind = 'minutes' | 'volume' | 'drops';
export type StopKind = RunSettings['stop']['kind'];
export type Role = RunSettings['safetyConfirms'][number]['role'];
type Trial = NonNullable<RunSettings['trials']>[number];

/** The form as typed. Numbers stay text until the run starts, so that nothing typed is ever lost. */
export interface PrepareDraft {
  readonly name: string;
  readonly chargeVolumeMl: string;
  readonly chargeStrengthAbv: string;
  /** Standard uncertainties of the charge; empty for the usual ones. */
  readonly chargeDoubtMl: string;
  readonly chargeDoubtAbv: string;
  /** The ferment that the pot was charged with from its log; null for another charge. */
  readonly ferment: NonNullable<RunSettings['ferment']> | null;
  readonly rigDescription: string;
  readonly plates: string;
  readonly heatW: string;
  readonly pressureFrom: PressureFrom;
  readonly pressureUnit: PressureUnit;
  readonly stationPressure: string;
  readonly seaLevelPressure: string;
  readonly altitudeM: string;
  readonly probeKind: ProbeKind;
  /** From ice and steam; null for a probe as bought. */
  readonly correction: SetUp['correction'];
  readonly leastStrengthAbv: string;
  readonly stopKind: StopKind;
  readonly leastMeanStrengthAbv: string;
  readonly dripRateMlPerMin: string;
  readonly firstFractionKind: FirstFractionKind;
  readonly firstFractionAmount: string;
  readonly reactionTimeS: string;
  readonly role: Role;
  /** When this lesson ends, `11:45`; empty where nobody said. */
  readonly bell: string;
  /** For the class, stage by stage; null while nobody has written over the given text. */
  readonly lessonScript: LessonScript | null;
  /** What was tried in this room, and what was said of it. */
  readonly trials: readonly Trial[];
  /** Checks confirmed so far, each with the role of who did. */
  readonly confirms: RunSettings['safetyConfirms'];
}

export const firstDraft: PrepareDraft = {
  name: say('Pear-juice ferment'),
  chargeVolumeMl: '350',
  chargeStrengthAbv: '9',
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
  altitudeM: '',
  probeKind: 'digital',
  correction: null,
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
