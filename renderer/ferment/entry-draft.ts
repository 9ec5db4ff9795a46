import {
  type FermentRead,
  fail,
  fermentReadSchema,
  inDecimals,
  type Result,
  say,
  succeed,
  told,
} from '#shared-core';
import { type Decimal, momentIso, numberFrom } from '../words/index.ts';

/** What is being entered, as typed. */
export interface EntryDraft {
  /** Null where the moment is left to the clock: now, whenever that is. */
  readonly at: string | null;
  readonly gravity: string;
  readonly gravityTemperatureC: string;
  readonly massG: string;
  readonly temperatureC: string;
  readonly bubblesPerMin: string;
  readonly ph: string;
  readonly refractometerPercent: string;
  readonly treatments: Readonly<FermentRead['treatments']>;
  readonly note: string;
}

export type EntryField = keyof EntryDraft;
/** What a field needs, where it needs a better entry; `form` where it is none of them. */
export type EntryProblems = Partial<Record<EntryField | 'form', string>>;

export const emptyEntry: EntryDraft = {
  at: null,
  gravity: '',
  gravityTemperatureC: '20',
  massG: '',
  temperatureC: '',
  bubblesPerMin: '',
  ph: '',
  refractometerPercent: '',
  treatments: [],
  note: '',
};

const numberFields = [
  'gravity',
  'gravityTemperatureC',
  'massG',
  'temperatureC',
  'bubblesPerMin',
  'ph',
  'refractometerPercent',
] as const;

/** The reading of what is typed, or what each field needs; `now` stands in the field of a moment that is left to the clock. */
export function readFromDraft(
  draft: EntryDraft,
  now: Date,
  decimal: Decimal = '.',
): Result<FermentRead, EntryProblems> {
  const problems: { -readonly [F in keyof EntryProblems]: string } = {};
  for (const field of numberFields) {
    if (draft[field].trim() !== '' && numberFrom(draft[field]) === null) {
      problems[field] = say('A number, please, or nothing.');
    }
  }
  const number = (field: (typeof numberFields)[number]) =>
    draft[field].trim() === '' ? null : numberFrom(draft[field]);
  const indicated = number('gravity');
  const atIso = draft.at === null ? now.toISOString() : momentIso(draft.at, now);
  if (atIso === null) problems.at = say('A day and a time, please.');
  const parsed = fermentReadSchema.safeParse({
    atIso: atIso ?? new Date(0).toISOString(),
    gravity: indicated === null ? null : { indicated, temperatureC: number('gravityTemperatureC') },
    massG: number('massG'),
    temperatureC: number('temperatureC'),
    bubblesPerMin: number('bubblesPerMin'),
    ph: number('ph'),
    refractometerPercent: number('refractometerPercent'),
    treatments: draft.treatments,
    note: draft.note.trim(),
  });
  for (const { path, message } of parsed.error?.issues ?? []) {
    problems[fieldAt(path)] ??= `${inDecimals(told(message), decimal)}.`;
  }
  return parsed.success && Object.keys(problems).length === 0
    ? succeed(parsed.data)
    : fail(problems);
}

function fieldAt([first, second]: readonly PropertyKey[]): keyof EntryProblems {
  if (first === 'gravity') return second === 'temperatureC' ? 'gravityTemperatureC' : 'gravity';
  if (first === 'treatments' || first === 'note') return first;
  return numberFields.find((field) => field === first) ?? 'form';
}
