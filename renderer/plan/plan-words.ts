import {
  assertNever,
  type NoMainFractionCause,
  type PlanVerdict,
  type RunPlan,
} from '#shared-core';
import { type Decimal, durationWords, numberWords, rangeWords } from '../words/index.ts';

/** Minutes as a range: planning to the second would promise too much. */
function minutes({ low, high }: { readonly low: number; readonly high: number }): string {
  const from = Math.floor(low / 60);
  const to = Math.ceil(high / 60);
  return to <= 90 ? `${from}–${to} min` : `${durationWords(low)} to ${durationWords(high)}`;
}

/** The plan in one sentence: what will come over, when, and how sure. */
export function planSentence(plan: RunPlan, leastStrengthAbv: number, decimal: Decimal): string {
  const limit = `${numberWords(leastStrengthAbv, 0, decimal)}\u00a0% vol`;
  const { verdict, mainFraction, timeToVapourS } = plan;
  const vapour = timeToVapourS ? `Vapour reaches the head after ${minutes(timeToVapourS)}. ` : '';
  if (verdict.kind === 'no-main-fraction' || mainFraction === null) {
    return `${vapour}${noMainFractionWords(verdict, limit)}`;
  }
  return (
    `${vapour}Then expect ${rangeWords(mainFraction.volumeMl, 0, 'mL', decimal)} above ${limit}, ` +
    `over ${minutes(mainFraction.lengthS)}, ` +
    `at ${rangeWords(mainFraction.strengthAbv, 0, '% vol', decimal)} on average.`
  );
}

function noMainFractionWords(verdict: PlanVerdict, limit: string): string {
  if (verdict.kind === 'main-fraction') return `A main fraction above ${limit} is doubtful.`;
  const { plates, collectW, chargeStrengthAbv, leastStrengthAbv } = verdict.remedies;
  const remedies = [
    collectW !== null && `easing the heat to ${Math.round(collectW)} W while collecting`,
    plates !== null && platesWords(Math.ceil(plates), verdict.cause),
    chargeStrengthAbv !== null && `a charge of ${Math.ceil(chargeStrengthAbv)} % vol`,
    leastStrengthAbv !== null && `a limit of ${Math.floor(leastStrengthAbv)} % vol`,
  ].filter((remedy) => remedy !== false);
  const help = remedies.length > 0 ? ` Any of these would help: ${remedies.join('; ')}.` : '';
  return `No main fraction above ${limit} is to be expected: ${causeWords(verdict.cause)}.${help}`;
}

function platesWords(plates: number, cause: NoMainFractionCause): string {
  const words = plates === 1 ? '1 plate' : `${plates} plates`;
  return cause === 'no-column' ? `a column of ${words}, heated gently` : `${words} instead`;
}

function causeWords(cause: NoMainFractionCause): string {
  switch (cause) {
    case 'no-column':
      return 'there is no column on the pot';
    case 'too-few-plates':
      return 'the column has too few plates';
    case 'too-little-reflux':
      return 'too little runs back down the column';
    case 'weak-charge':
      return 'the charge is too weak';
    default:
      return assertNever(cause);
  }
}
