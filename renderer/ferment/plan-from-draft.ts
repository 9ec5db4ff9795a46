import {
  type FermentPlan,
  fail,
  type fruitSugars,
  gravityAt20C,
  planFerment,
  type Result,
  say,
  succeed,
  sugarToWeighG,
} from '#shared-core';
import { numberFrom } from '../words/index.ts';

export type MainSource = 'sucrose' | 'hexose' | 'juice' | (typeof fruitSugars)[number]['fruit'];

/** The plan of a ferment as typed. */
export interface FermentPlanDraft {
  readonly source: MainSource;
  readonly amount: string;
  readonly gravity: string;
  readonly temperatureC: string;
  readonly addedSugarG: string;
  readonly volumeMl: string;
  readonly vesselMl: string;
  readonly yeastBearsAbv: string;
  readonly wantedAbv: string;
}

export const firstFermentPlan: FermentPlanDraft = {
  source: 'juice',
  amount: '1000',
  gravity: '1.050',
  temperatureC: '20',
  addedSugarG: '0',
  volumeMl: '1000',
  vesselMl: '2000',
  yeastBearsAbv: '14',
  wantedAbv: '9',
};

const bounds = {
  amount: { low: 0, high: 1e6, words: say('A number from 0 to 1 000 000.') },
  gravity: { low: 1, high: 1.2, words: say('A gravity from 1.000 to 1.200.') },
  // Source: the range of `gravityAt20C`.
  temperatureC: { low: 0, high: 40, words: say('A temperature from 0 to 40 °C.') },
  addedSugarG: { low: 0, high: 1e5, words: say('A number from 0 to 100 000.') },
  volumeMl: { low: 50, high: 1e6, words: say('A number from 50 to 1 000 000.') },
  vesselMl: { low: 50, high: 1e6, words: say('A number from 50 to 1 000 000.') },
  yeastBearsAbv: { low: 5, high: 20, words: say('A number from 5 to 20.') },
  wantedAbv: { low: 0, high: 20, words: say('A number from 0 to 20.') },
} as const;
export type FermentPlanField = keyof typeof bounds;

/** What a field needs, where it needs a better entry. */
export type FermentPlanProblems = Partial<Record<FermentPlanField, string>>;

type Source = Parameters<typeof planFerment>[0]['sources'][number];

export interface FermentPlanShown {
  readonly plan: FermentPlan;
  readonly wantedAbv: number;
  /** Table sugar to add for the wanted strength, if the sources hold the least or the most they may [g]. */
  readonly sugarToAddG: { readonly low: number; readonly high: number };
}

/** The plan of what is typed, or what each field needs. */
export function planFromDraft(
  draft: FermentPlanDraft,
  leastUsefulAbv: number | null,
): Result<FermentPlanShown, FermentPlanProblems> {
  const problems: { -readonly [F in FermentPlanField]?: string } = {};
  const read = (field: FermentPlanField): number => {
    const { low, high, words } = bounds[field];
    const value = numberFrom(draft[field]);
    if (value !== null && value >= low && value <= high) return value;
    problems[field] = words;
    return low;
  };
  const source = sourceOf(
    draft.source,
    read('amount'),
    draft.source === 'juice' ? gravityAt20C(read('gravity'), read('temperatureC')) : 1,
  );
  const added: Source = { kind: 'sucrose', massG: read('addedSugarG') };
  const request: Parameters<typeof planFerment>[0] = {
    sources: [source, added],
    volumeMl: read('volumeMl'),
    vesselMl: read('vesselMl'),
    yeastBearsAbv: read('yeastBearsAbv'),
    leastUsefulAbv,
  };
  const wantedAbv = read('wantedAbv');
  if (Object.keys(problems).length > 0) return fail(problems);
  const plan = planFerment(request);
  const toAdd = (alreadyG: number) =>
    sugarToWeighG(wantedAbv, request.volumeMl, alreadyG, 'sucrose');
  return succeed({
    plan,
    wantedAbv,
    sugarToAddG: { low: toAdd(plan.sugarG.high), high: toAdd(plan.sugarG.low) },
  });
}

function sourceOf(source: MainSource, amount: number, gravity: number): Source {
  if (source === 'juice') return { kind: 'juice', gravity, volumeMl: amount };
  if (source === 'sucrose' || source === 'hexose') return { kind: source, massG: amount };
  return { kind: 'fruit', fruit: source, massG: amount };
}
