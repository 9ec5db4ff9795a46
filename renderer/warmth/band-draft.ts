import { fail, type KeptWarm, type Result, succeed, warmthBandSchema } from '#shared-core';
import { type Decimal, numberFrom, numberWords } from '../words/index.ts';

export type WarmthBand = KeptWarm['keeping']['band'];

/** The ends of a band and its set-point, as typed. */
export type BandDraft = Readonly<Record<keyof WarmthBand, string>>;
export type BandProblems = Partial<Record<keyof WarmthBand, string>>;

export function bandDraft({ lowC, aimC, highC }: WarmthBand, decimal: Decimal): BandDraft {
  const words = (value: number) => numberWords(value, Number.isInteger(value) ? 0 : 1, decimal);
  return { lowC: words(lowC), aimC: words(aimC), highC: words(highC) };
}

/** The band that is typed, or what each field needs. */
export function bandFromDraft(draft: BandDraft): Result<WarmthBand, BandProblems> {
  const read = warmthBandSchema.safeParse({
    lowC: numberFrom(draft.lowC),
    aimC: numberFrom(draft.aimC),
    highC: numberFrom(draft.highC),
  });
  if (read.success) return succeed(read.data);
  const problems: BandProblems = {};
  for (const { path, message } of read.error.issues) {
    const [field] = path;
    if (field === 'lowC' || field === 'aimC' || field === 'highC') {
      problems[field] ??= `${message}.`;
    }
  }
  return fail(problems);
}
