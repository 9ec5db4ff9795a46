import { fail, type ProbeSource, type Result, type SetUp, succeed } from '#shared-core';
import type { FieldProblem } from '../draft/index.ts';
import { settingsFromDraft } from '../draft/index.ts';
import type { PrepareDraft } from '../stores/index.ts';
import { numberFrom } from '../words/index.ts';

/**
 * What of the form is the same in the next lesson, or every field that needs a better entry first. The pressure of this day is
 * left out, so it need not be there yet.
 */
export function setUpFromDraft(
  draft: PrepareDraft,
  source: ProbeSource | null,
): Result<SetUp, readonly FieldProblem[]> {
  const altitudeM = draft.altitudeM.trim() === '' ? null : numberFrom(draft.altitudeM);
  const settings = settingsFromDraft({
    ...draft,
    pressureFrom: 'altitude',
    altitudeM: draft.altitudeM.trim() === '' ? '0' : draft.altitudeM,
  });
  if (!settings.ok) return fail(settings.error);
  const { name, charge, rig, leastStrengthAbv, stop, firstFraction, reactionTimeS } =
    settings.value;
  const { probeKind, correction, correctionOf, pressureFrom, pressureUnit, lessonScript } = draft;
  return succeed({
    name,
    isNameAssumed: draft.name.trim() === '',
    charge: {
      volumeMl: charge.volumeMl,
      strengthAbv: charge.strengthAbv,
      ...(charge.assumed && { assumed: charge.assumed }),
    },
    // The simulated still is no probe of any rig.
    source: source?.kind === 'demo' ? null : source,
    probeKind,
    isProbeKindAssumed: draft.assumed.includes('probe-kind'),
    correction,
    correctionOf,
    rig,
    pressureFrom,
    pressureUnit,
    altitudeM,
    leastStrengthAbv,
    stop,
    firstFraction,
    reactionTimeS,
    lessonScript,
    dripRateMlPerMin: numberFrom(draft.dripRateMlPerMin) ?? 1,
  });
}
