import type { SetUp } from '#shared-core';
import { assumedOfCharge } from '../draft/index.ts';
import { firstDraft, type PrepareDraft } from '../stores/index.ts';
import type { Decimal } from '../words/index.ts';

/** What was said of this room, this lesson and its ferment, whichever still stands in it. */
type OfToday = Pick<
  PrepareDraft,
  | 'role'
  | 'bell'
  | 'trials'
  | 'name'
  | 'chargeVolumeMl'
  | 'chargeStrengthAbv'
  | 'assumed'
  | 'ferment'
  | 'calibrationPoints'
>;

/**
 * The form as a kept set-up fills it. The barometer's reading was of another day, that in steam
 * of another day and perhaps another probe, and nobody has looked at the bench yet: both are
 * asked for again.
 */
export function draftFromSetUp(
  setUp: SetUp,
  { role, bell, trials, ...now }: OfToday,
  decimal: Decimal,
): PrepareDraft {
  const { charge, rig, stop } = setUp;
  const text = (value: number | null) =>
    value === null ? '' : String(value).replace('.', decimal);
  return {
    ...firstDraft,
    ...firstFractionFrom(setUp, text),
    role,
    bell,
    trials,
    name: setUp.isNameAssumed ? '' : setUp.name,
    chargeVolumeMl: text(charge.volumeMl),
    chargeStrengthAbv: text(charge.strengthAbv),
    // Whoever takes it from an earlier lesson states it; what was only assumed then still is.
    assumed: [
      ...(now.ferment === null ? (charge.assumed ?? []) : assumedOfCharge(now)),
      ...(setUp.isProbeKindAssumed ? (['probe-kind'] as const) : []),
    ],
    rigDescription: rig.description,
    plates: text(rig.plates),
    heatW: text(rig.heatW),
    pressureFrom: setUp.pressureFrom,
    pressureUnit: setUp.pressureUnit,
    altitudeM: text(setUp.altitudeM),
    probeKind: setUp.probeKind,
    correction: setUp.correction,
    correctionOf: setUp.correctionOf,
    calibrationPoints: now.calibrationPoints,
    leastStrengthAbv: text(setUp.leastStrengthAbv),
    stopKind: stop.kind,
    ...(stop.kind === 'purity-against-recovery' && {
      leastMeanStrengthAbv: text(stop.leastMeanStrengthAbv),
    }),
    dripRateMlPerMin: text(setUp.dripRateMlPerMin),
    reactionTimeS: text(setUp.reactionTimeS),
    // What is in the pot from its log is of today, whatever was in it last time.
    ...(now.ferment && {
      name: now.name,
      chargeVolumeMl: now.chargeVolumeMl,
      chargeStrengthAbv: now.chargeStrengthAbv,
      ferment: now.ferment,
    }),
    lessonScript: setUp.lessonScript,
  };
}

function firstFractionFrom(
  { firstFraction }: SetUp,
  text: (value: number) => string,
): Pick<PrepareDraft, 'firstFractionKind' | 'firstFractionAmount'> {
  const { kind } = firstFraction;
  switch (kind) {
    case 'minutes':
      return { firstFractionKind: kind, firstFractionAmount: text(firstFraction.minutes) };
    case 'volume':
      return { firstFractionKind: kind, firstFractionAmount: text(firstFraction.volumeMl) };
    case 'drops':
      return { firstFractionKind: kind, firstFractionAmount: text(firstFraction.count) };
  }
}
