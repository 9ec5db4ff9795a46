import { type NumberRange, say, settingRanges } from '#shared-core';
import { numberFrom } from '../words/index.ts';
import type { WhatIfChange } from './what-if-change.ts';

/** The what-if as typed. */
export interface WhatIfDraft {
  readonly pressureKPa: string;
  readonly leastStrengthAbv: string;
  readonly plates: string;
}

export interface CheckedDraft {
  readonly change: WhatIfChange | null;
  readonly problems: Readonly<Partial<Record<keyof WhatIfDraft, string>>>;
}

const inWords = ({ low, high }: NumberRange, unit: string) =>
  say('Between {low} and {high} {unit}.', { low, high, unit });

/** Ranges of the run's settings, in the words of the fields. */
const problems = {
  pressureKPa: inWords(settingRanges.pressureKPa, 'kPa'),
  leastStrengthAbv: inWords(settingRanges.leastStrengthAbv, '% vol'),
  plates: say('Between {low} and {high}, or empty.', { ...settingRanges.plates }),
} as const;

/** The change a draft stands for, or what is wrong with it. Empty plates mean that they are not known. */
export function checkDraft(draft: WhatIfDraft): CheckedDraft {
  const pressureKPa = within('pressureKPa', draft.pressureKPa);
  const leastStrengthAbv = within('leastStrengthAbv', draft.leastStrengthAbv);
  const plates = draft.plates.trim() === '' ? null : within('plates', draft.plates);
  const isPlatesWrong = plates === undefined;
  if (pressureKPa !== undefined && leastStrengthAbv !== undefined && !isPlatesWrong) {
    return { change: { pressureKPa, leastStrengthAbv, plates }, problems: {} };
  }
  return {
    change: null,
    problems: {
      ...(pressureKPa === undefined ? { pressureKPa: problems.pressureKPa } : {}),
      ...(leastStrengthAbv === undefined ? { leastStrengthAbv: problems.leastStrengthAbv } : {}),
      ...(isPlatesWrong ? { plates: problems.plates } : {}),
    },
  };
}

function within(field: keyof typeof problems, text: string): number | undefined {
  const { low, high } = settingRanges[field];
  const value = numberFrom(text);
  return value !== null && value >= low && value <= high ? value : undefined;
}
