import {
  defaultRunSettings,
  fail,
  inDecimals,
  type Result,
  type RunSettings,
  say,
  settingRanges,
  standardFromNinety,
  succeed,
} from '#shared-core';
import type { PrepareDraft } from '../stores/index.ts';
import { type Decimal, mayHaveThousandsMark, numberFrom, thousandsWords } from '../words/index.ts';
import { assumedChargeDoubt, assumedOfCharge } from './assumed-parts.ts';
import { type FieldProblem, pressureFromDraft } from './pressure-from-draft.ts';
import { probeFromDraft } from './probe-from-draft.ts';
import { probeKinds } from './probe-kinds.ts';
import { runNameOf } from './run-name.ts';

interface Bounds {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

const bounds = {
  chargeVolumeMl: { ...settingRanges.chargeVolumeMl, unit: 'mL' },
  chargeStrengthAbv: { ...settingRanges.chargeStrengthAbv, unit: '% vol' },
  chargeDoubtMl: { ...settingRanges.chargeDoubtMl, unit: 'mL' },
  chargeDoubtAbv: { ...settingRanges.chargeDoubtAbv, unit: '% vol' },
  leastStrengthAbv: { ...settingRanges.leastStrengthAbv, unit: '% vol' },
  reactionTimeS: { ...settingRanges.reactionTimeS, unit: 's' },
  leastMeanStrengthAbv: { ...settingRanges.leastStrengthAbv, unit: '% vol' },
  dripRateMlPerMin: { low: 0.05, high: 100, unit: 'mL/min' },
  plates: { ...settingRanges.plates, unit: say('plates') },
  heatW: { ...settingRanges.heatW, unit: 'W' },
} as const satisfies Partial<Record<keyof PrepareDraft, Bounds>>;

const firstFractionBounds = {
  minutes: { ...settingRanges.firstFractionMinutes, unit: 'min' },
  volume: { ...settingRanges.firstFractionMl, unit: 'mL' },
  drops: { ...settingRanges.firstFractionDrops, unit: say('drops') },
} as const;

/** The run's settings from the form, or every field that still needs a better entry, told with the decimal sign of whoever types. */
export function settingsFromDraft(
  draft: PrepareDraft,
  decimal: Decimal = '.',
): Result<RunSettings, readonly FieldProblem[]> {
  const problems: FieldProblem[] = [];
  const read = (field: keyof typeof bounds): number => {
    const { low, high } = bounds[field];
    if (high >= 1000 && mayHaveThousandsMark(draft[field])) {
      problems.push({ field, message: thousandsWords });
      return low;
    }
    const value = numberFrom(draft[field]);
    if (value !== null && value >= low && value <= high) return value;
    problems.push({
      field,
      message: betweenWords(bounds[field], decimal),
    });
    return low;
  };
  const readOrUnknown = (field: 'plates' | 'heatW' | 'chargeDoubtMl' | 'chargeDoubtAbv') =>
    draft[field].trim() === '' ? null : read(field);

  const pressure = pressureFromDraft(draft, decimal);
  if (!pressure.ok) problems.push(...pressure.error);
  read('dripRateMlPerMin');
  const assumedCharge = assumedOfCharge(draft);
  const volumeDoubtMl =
    readOrUnknown('chargeDoubtMl') ??
    (assumedCharge.includes('volume') ? assumedChargeDoubt.volumeMl : null);
  const settings: Omit<RunSettings, 'pressure'> = {
    name: runNameOf(draft),
    charge: {
      volumeMl: read('chargeVolumeMl'),
      strengthAbv: read('chargeStrengthAbv'),
      standardUncertaintyAbv: readOrUnknown('chargeDoubtAbv') ?? strengthDoubtAbv(draft),
      ...(volumeDoubtMl !== null && { standardUncertaintyMl: volumeDoubtMl }),
      ...(assumedCharge.length > 0 && { assumed: [...assumedCharge] }),
    },
    rig: {
      description: draft.rigDescription.trim(),
      plates: readOrUnknown('plates'),
      heatW: readOrUnknown('heatW'),
      columnLossW: null,
    },
    probe: {
      ...probeFromDraft(draft),
      silenceS: defaultRunSettings.probe.silenceS,
      lagT90S: probeKinds[draft.probeKind].lagT90S,
      ...(draft.assumed.includes('probe-kind') && { assumed: ['probe-kind' as const] }),
    },
    leastStrengthAbv: read('leastStrengthAbv'),
    stop:
      draft.stopKind === 'strength'
        ? { kind: 'strength' }
        : { kind: draft.stopKind, leastMeanStrengthAbv: read('leastMeanStrengthAbv') },
    firstFraction: readFirstFraction(draft, problems, decimal),
    reactionTimeS: read('reactionTimeS'),
    attentionCheckS: 900,
    safetyConfirms: [...draft.confirms],
    ...(draft.trials.length > 0 && { trials: [...draft.trials] }),
    ...(draft.ferment && { ferment: draft.ferment }),
  };
  if (!pressure.ok || problems.length > 0) return fail(problems);
  return succeed({ ...settings, pressure: pressure.value.setting });
}

function betweenWords({ low, high, unit }: Bounds, decimal: Decimal): string {
  const typed = (value: number) => inDecimals(`${value}`, decimal);
  return say('A number from {low} to {high} {unit}.', {
    low: typed(low),
    high: typed(high),
    unit,
  });
}

/** That of the ferment's judge while its strength stands in the form; whoever writes another one measured it; wide where nobody did. */
export function strengthDoubtAbv({
  ferment,
  chargeStrengthAbv,
  assumed,
}: Pick<PrepareDraft, 'ferment' | 'chargeStrengthAbv' | 'assumed'>): number {
  if (assumed.includes('strength')) return assumedChargeDoubt.strengthAbv;
  const isJudged =
    ferment !== null &&
    numberFrom(chargeStrengthAbv) === Number(ferment.strengthAbv.value.toFixed(1));
  return isJudged
    ? standardFromNinety(ferment.strengthAbv)
    : defaultRunSettings.charge.standardUncertaintyAbv;
}

function readFirstFraction(
  { firstFractionKind: kind, firstFractionAmount }: PrepareDraft,
  problems: FieldProblem[],
  decimal: Decimal,
): RunSettings['firstFraction'] {
  const { low, high } = firstFractionBounds[kind];
  const isDoubtful = high >= 1000 && mayHaveThousandsMark(firstFractionAmount);
  const amount = isDoubtful ? null : numberFrom(firstFractionAmount);
  if (amount === null || amount < low || amount > high) {
    problems.push({
      field: 'firstFractionAmount',
      message: isDoubtful ? thousandsWords : betweenWords(firstFractionBounds[kind], decimal),
    });
    return { kind: 'minutes', minutes: 0 };
  }
  switch (kind) {
    case 'minutes':
      return { kind, minutes: amount };
    case 'volume':
      return { kind, volumeMl: amount };
    case 'drops':
      return { kind, count: Math.round(amount) };
  }
}
