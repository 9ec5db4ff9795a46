import {
  fail,
  hexoseFromSucroseGPerG,
  type Result,
  type StatedFerment,
  say,
  statedFermentSchema,
  succeed,
  told,
} from '#shared-core';
import { type Decimal, momentIso, momentText, numberFrom, numberWords } from '../words/index.ts';
import { fruitNames } from './fruit-names.ts';
import type { FermentPlanDraft, FermentPlanShown, MainSource } from './plan-from-draft.ts';

export type PlannedFerment = Omit<StatedFerment, 'beganAtIso'>;

/** What is stated as a ferment begins, as typed. */
export interface BeginDraft {
  readonly name: string;
  /** Null where the moment is left to the clock: now, whenever that is. */
  readonly began: string | null;
  readonly volumeMl: string;
  /** Empty where the sugar is the fruit's; unused where a plan brought its sugar. */
  readonly tableSugarG: string;
  readonly wentIn: string;
}

export type BeginProblems = Partial<Record<keyof BeginDraft, string>>;

export function beginDraft(planned: PlannedFerment | null): BeginDraft {
  return {
    name: planned?.name ?? '',
    began: null,
    volumeMl: planned === null ? '' : String(planned.volumeMl),
    tableSugarG: '',
    wentIn: planned?.wentIn ?? '',
  };
}

/** What was stated, as it stands in its fields to be put right. Sugar that is a range has no field: it is left as it is. */
export function draftOfStated(
  { name, beganAtIso, volumeMl, sugarG, wentIn }: StatedFerment,
  decimal: Decimal,
): BeginDraft {
  const isOneSugar = sugarG !== null && sugarG.low === sugarG.high;
  return {
    name,
    began: momentText(beganAtIso),
    volumeMl: String(volumeMl).replace('.', decimal),
    tableSugarG: isOneSugar ? numberWords(sugarG.low / hexoseFromSucroseGPerG, 1, decimal) : '',
    wentIn,
  };
}

/** What is known before anything is typed, and how that stands in the fields. */
export interface KnownStatement {
  readonly draft: BeginDraft;
  readonly sugarG: StatedFerment['sugarG'];
  /** What the field of the beginning was filled with; now where it is left to the clock. */
  readonly beganAtIso: string;
}

/** What is stated by what is typed, or what each field needs. A field that was left alone says what was known, to the last digit. */
export function statedFromDraft(
  draft: BeginDraft,
  known: KnownStatement,
): Result<StatedFerment, BeginProblems> {
  const problems: { -readonly [F in keyof BeginProblems]: string } = {};
  const isLeft = (field: keyof BeginDraft) => draft[field] === known.draft[field];
  const beganAtIso =
    draft.began === null ? known.beganAtIso : momentIso(draft.began, known.beganAtIso);
  if (beganAtIso === null) problems.began = say('A day and a time, please.');
  const tableSugarG = draft.tableSugarG.trim() === '' ? null : numberFrom(draft.tableSugarG);
  const isSugarWrong = tableSugarG === null ? draft.tableSugarG.trim() !== '' : tableSugarG <= 0;
  if (isSugarWrong) problems.tableSugarG = say('A number of grams, more than 0, or nothing.');
  const hexoseG = (tableSugarG ?? 0) * hexoseFromSucroseGPerG;
  const typedG = hexoseG > 0 ? { low: hexoseG, high: hexoseG } : null;
  const parsed = statedFermentSchema.safeParse({
    name: draft.name,
    beganAtIso: beganAtIso ?? new Date(0).toISOString(),
    volumeMl: numberFrom(draft.volumeMl),
    sugarG: isLeft('tableSugarG') ? known.sugarG : typedG,
    wentIn: draft.wentIn.trim(),
  });
  for (const { path, message } of parsed.error?.issues ?? []) {
    const [first] = path;
    if (first === 'name' || first === 'volumeMl' || first === 'wentIn') {
      problems[first] ??= `${told(message)}.`;
    }
  }
  return parsed.success && Object.keys(problems).length === 0
    ? succeed(parsed.data)
    : fail(problems);
}

/** A plan as the beginning of a log. */
export function plannedFerment(
  { source, amount, gravity, temperatureC, addedSugarG, volumeMl }: FermentPlanDraft,
  { plan }: FermentPlanShown,
): PlannedFerment {
  const from = {
    juice: say('{amount} mL of juice, gravity {gravity} at {temperature} °C', {
      amount,
      gravity,
      temperature: temperatureC,
    }),
    sucrose: say('{amount} g of table sugar', { amount }),
    hexose: say('{amount} g of grape or fruit sugar', { amount }),
  } as const;
  const main = isFruit(source)
    ? say('{amount} g of {fruit}', { amount, fruit: fruitNames[source] })
    : from[source];
  const added =
    Number(numberFrom(addedSugarG)) > 0
      ? ` ${say('and {addedSugarG} g of table sugar', { addedSugarG })}`
      : '';
  return {
    name:
      source === 'juice'
        ? say('Juice ferment')
        : say('Ferment of {what}', { what: isFruit(source) ? fruitNames[source] : say('sugar') }),
    volumeMl: numberFrom(volumeMl) ?? 0,
    sugarG: plan.sugarG.high > 0 ? { low: plan.sugarG.low, high: plan.sugarG.high } : null,
    wentIn: say('{main}{added}, filled up to {volume} mL', { main, added, volume: volumeMl }),
  };
}

function isFruit(source: MainSource): source is keyof typeof fruitNames {
  return Object.hasOwn(fruitNames, source);
}
