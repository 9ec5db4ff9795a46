import { say } from '#shared-core';
import type { ToDo } from './still-to-do.ts';

/** From cold glass to the start, in the order in which it is done at the bench. */
export const stepIds = ['probe', 'pot', 'air', 'checks'] as const;
export type StepId = (typeof stepIds)[number];

export const stepTitles: Readonly<Record<StepId, string>> = {
  probe: say('Probe'),
  pot: say('In the pot'),
  air: say('Air pressure'),
  checks: say('Before heat'),
};

const stepOfField: Readonly<Record<ToDo['field'], StepId>> = {
  probe: 'probe',
  name: 'pot',
  chargeVolumeMl: 'pot',
  chargeStrengthAbv: 'pot',
  chargeDoubtMl: 'pot',
  chargeDoubtAbv: 'pot',
  rigDescription: 'pot',
  plates: 'pot',
  heatW: 'pot',
  leastStrengthAbv: 'pot',
  leastMeanStrengthAbv: 'pot',
  dripRateMlPerMin: 'pot',
  firstFractionAmount: 'pot',
  reactionTimeS: 'pot',
  stationPressure: 'air',
  seaLevelPressure: 'air',
  steamReading: 'air',
  altitudeM: 'air',
  checks: 'checks',
};

/** What of it is done in this step. */
export function toDoIn(step: StepId, toDo: readonly ToDo[]): readonly ToDo[] {
  return toDo.filter(({ field }) => stepOfField[field] === step);
}

/** The step that follows; null after the last, which starts the run. */
export function stepAfter(step: StepId): StepId | null {
  return stepIds[stepIds.indexOf(step) + 1] ?? null;
}

export const stepElementId = (step: StepId): string => `step-${step}`;
export const stepHeadingId = (step: StepId): string => `step-${step}-title`;

/** Brings the step to the top of the window, and whoever hears the window or types to its heading. */
export function goToStep(step: StepId): void {
  document.getElementById(stepElementId(step))?.scrollIntoView({ block: 'start' });
  document.getElementById(stepHeadingId(step))?.focus({ preventScroll: true });
}
