import { assertNever, type RunPlan, say } from '#shared-core';
import { type Decimal, durationWords, numberWords, rangeWords } from '../words/index.ts';

type NoMainFractionCause = Extract<RunPlan['verdict'], { kind: 'no-main-fraction' }>['cause'];

/** Minutes as a range: planning to the second would promise too much. */
function minutes({ low, high }: { readonly low: number; readonly high: number }): string {
  const from = Math.floor(low / 60);
  const to = Math.ceil(high / 60);
  return to <= 90
    ? `${from}–${to} min`
    : say('{low} to {high}', { low: durationWords(low), high: durationWords(high) });
}

/** The plan in one sentence: what will come over, when, and how sure. */
export function planSentence(plan: RunPlan, leastStrengthAbv: number, decimal: Decimal): string {
  const limit = `${numberWords(leastStrengthAbv, 0, decimal)}\u00a0% vol`;
  const { verdict, mainFraction, timeToVapourS } = plan;
  const vapour = timeToVapourS
    ? `${say('Vapour reaches the head after {minutes}.', { minutes: minutes(timeToVapourS) })} `
    : '';
  if (verdict.kind === 'no-main-fraction' || mainFraction === null) {
    return `${vapour}${noMainFractionWords(verdict, limit)}`;
  }
  return say(
    '{vapour}Then expect {volume} above {limit}, over {minutes}, at {strength} on average.',
    {
      vapour,
      volume: rangeWords(mainFraction.volumeMl, 0, 'mL', decimal),
      limit,
      minutes: minutes(mainFraction.lengthS),
      strength: rangeWords(mainFraction.strengthAbv, 0, '% vol', decimal),
    },
  );
}

function noMainFractionWords(verdict: RunPlan['verdict'], limit: string): string {
  if (verdict.kind === 'main-fraction')
    return say('A main fraction above {limit} is doubtful.', { limit });
  const { plates, collectW, chargeStrengthAbv, leastStrengthAbv } = verdict.remedies;
  const remedies = [
    collectW !== null &&
      say('easing the heat to {collectW} W while collecting', { collectW: Math.round(collectW) }),
    plates !== null && platesWords(Math.ceil(plates), verdict.cause),
    chargeStrengthAbv !== null &&
      say('a charge of {chargeStrength} % vol', { chargeStrength: Math.ceil(chargeStrengthAbv) }),
    leastStrengthAbv !== null &&
      say('a limit of {leastStrength} % vol', { leastStrength: Math.floor(leastStrengthAbv) }),
  ].filter((remedy) => remedy !== false);
  const help =
    remedies.length > 0
      ? ` ${say('Any of these would help: {remedies}.', { remedies: remedies.join('; ') })}`
      : '';
  return say('No main fraction above {limit} is to be expected: {cause}.{help}', {
    limit,
    cause: causeWords(verdict.cause),
    help,
  });
}

function platesWords(plates: number, cause: NoMainFractionCause): string {
  return cause === 'no-column'
    ? say('a column of {plates, plural, one {# plate} other {# plates}}, heated gently', { plates })
    : say('{plates, plural, one {# plate} other {# plates}} instead', { plates });
}

function causeWords(cause: NoMainFractionCause): string {
  switch (cause) {
    case 'no-column':
      return say('there is no column on the pot');
    case 'too-few-plates':
      return say('the column has too few plates');
    case 'too-little-reflux':
      return say('too little runs back down the column');
    case 'weak-charge':
      return say('the charge is too weak');
    default:
      return assertNever(cause);
  }
}
