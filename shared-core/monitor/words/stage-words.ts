import type { MonitorFacts } from '../monitor-facts.ts';
import { isBlind, probeFaultWords } from '../sense/probe-fault.ts';
import type { HeadState } from '../situation/vapour-filter.ts';
import { firstFractionWords } from './first-fraction-words.ts';
import { ofStrength } from './head-strength.ts';
import { celsius, kelvin, moving, percent, span } from './numbers.ts';

/** The limit watched for, with where this probe shows it: `80 % vol (82.3 °C on this probe)`. */
export function limitWords({ limitAbv, outlook }: MonitorFacts): string {
  return `${limitAbv} % vol (${celsius(outlook.limitOnProbeC)} on this probe)`;
}

/** The evidence for the present stage, in words with numbers. */
export function stageBecause(facts: MonitorFacts): string {
  const { head, scale, situation, stage, outlook } = facts;
  if (facts.fault !== null && isBlind(facts.fault)) {
    return `Staging waits: ${probeFaultWords[facts.fault]}. The last sure stage is kept.`;
  }
  if (head === null) return 'No reading of the head has come yet.';
  const azeotrope = `the azeotrope at ${scale.pressureKPa.toFixed(1)} kPa, ${celsius(scale.azeotropeC)}`;
  if (situation.recededSinceS !== null && stage !== 'cool-down') {
    return `The head fell to ${celsius(head.bulbC)}${heldWords(facts)}: vapour has receded from the bulb for ${span(facts.timeS - situation.recededSinceS)}.`;
  }
  switch (stage) {
    case 'warm-up':
      return situation.arrivedS === null
        ? `The bulb is at ${celsius(head.bulbC)}, ${against(head.bulbC, scale.azeotropeC)} ${azeotrope}; no vapour bathes it yet.`
        : `Vapour has reached the bulb, which is at ${celsius(head.bulbC)}, ${against(head.bulbC, scale.azeotropeC)} ${azeotrope}, and still warms up.`;
    case 'first-fraction':
      return `Vapour bathes the bulb at ${celsius(head.bulbC)} (${azeotrope}); ${firstFractionSoFar(facts)}`;
    case 'main-fraction':
      return `The head is at ${standingAt(head)}, ${against(head.vapourC, outlook.limitOnProbeC)} the limit of ${limitWords(facts)}, and ${moving(head.rateKPerS, head.rateSdKPerS)}: vapour ${ofStrength(facts)}.`;
    case 'tail':
      return outlook.passed < 0.5
        ? `The head has passed the limit of ${limitWords(facts)} before, and has not been below it for long. It is at ${standingAt(head)} now: vapour ${ofStrength(facts)}.`
        : `The head is at ${standingAt(head)}; the vapour is weaker than the limit of ${limitWords(facts)} with a probability of ${percent(outlook.passed)}: vapour ${ofStrength(facts)}.`;
    case 'cool-down':
      return `No vapour has reached the bulb for ${span(situation.absentS)}${facts.heat === 'off' ? ' after the heat was taken off' : ''}; it is at ${celsius(head.bulbC)}, ${against(head.bulbC, scale.azeotropeC)} ${azeotrope}.`;
  }
}

/** Less than this between bulb and vapour is not worth a word [K]. */
const tellableLagK = 0.15;

/** Where the head stands; with the vapour's own temperature where the bulb lags behind it, since calls go by that. */
export function standingAt({ bulbC, vapourC, wet }: HeadState): string {
  return wet < 0.5 || Math.abs(vapourC - bulbC) < tellableLagK
    ? celsius(bulbC)
    : `${celsius(bulbC)}, with the bulb's lag counted ${celsius(vapourC)}`;
}

/** Where a temperature stands against another: `1.2 K below`. */
export function against(temperatureC: number, otherC: number): string {
  return `${kelvin(temperatureC - otherC)} ${temperatureC < otherC ? 'below' : 'above'}`;
}

/** The held level is told only where the head has really fallen below it: in the tail it stood far above. */
function heldWords({ head, situation }: MonitorFacts): string {
  if (head === null || situation.levelC === null || head.bulbC > situation.levelC - 0.1) return '';
  return `, below the ${celsius(situation.levelC)} of its plateau`;
}

function firstFractionSoFar({ firstFraction, situation }: MonitorFacts): string {
  if (situation.heldS === null) return 'it has not come to rest yet.';
  const source = firstFraction.estimated ? ' (estimated, nothing booked)' : '';
  return `${firstFractionWords(firstFraction)} of the first fraction so far${source}. Its end is your convention: light volatiles are too little to be seen by temperature.`;
}

/** What would change the call, so that it can follow `This would change if`. */
export function stageWouldChangeIf(facts: MonitorFacts): string {
  const { scale, outlook, situation, firstFraction } = facts;
  if (isBlind(facts.fault)) {
    return 'Good readings came in again: staging then goes on where it was.';
  }
  if (situation.recededSinceS !== null && facts.stage !== 'cool-down') {
    return `The head came back near ${celsius(Math.min(situation.levelC ?? scale.azeotropeC, outlook.limitOnProbeC))} or higher: the stage then goes on. After some minutes below, it becomes the cool-down.`;
  }
  switch (facts.stage) {
    case 'warm-up':
      return `The bulb passed ${celsius(scale.azeotropeC - 5)} in vapour: then the first fraction begins.`;
    case 'first-fraction':
      return `The head held and ${firstFraction.wanted} ${firstFraction.unit} had been set apart: then the main fraction begins. If the head holds above ${celsius(outlook.limitOnProbeC)}, there is no main fraction.`;
    case 'main-fraction':
      return `The head passed ${celsius(outlook.limitOnProbeC)}: then the tail begins.`;
    case 'tail':
      return `The head held below ${celsius(outlook.limitOnProbeC)} for some minutes: then it is the main fraction again. No vapour for some minutes: then the cool-down begins.`;
    case 'cool-down':
      return 'Vapour came back to the bulb: the stage before then goes on.';
  }
}
