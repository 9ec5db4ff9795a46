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

/** Ranges of the run's settings, in the words of the fields. */
const ranges = {
  pressureKPa: { low: 60, high: 110, problem: 'Between 60 and 110 kPa.' },
  leastStrengthAbv: { low: 10, high: 96, problem: 'Between 10 and 96 % vol.' },
  plates: { low: 1, high: 40, problem: 'Between 1 and 40, or empty.' },
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
      ...(pressureKPa === undefined ? { pressureKPa: ranges.pressureKPa.problem } : {}),
      ...(leastStrengthAbv === undefined
        ? { leastStrengthAbv: ranges.leastStrengthAbv.problem }
        : {}),
      ...(isPlatesWrong ? { plates: ranges.plates.problem } : {}),
    },
  };
}

function within(field: keyof typeof ranges, text: string): number | undefined {
  const { low, high } = ranges[field];
  const value = numberFrom(text);
  return value !== null && value >= low && value <= high ? value : undefined;
}
