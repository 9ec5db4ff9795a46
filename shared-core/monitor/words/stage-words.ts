import type { MonitorFacts } from '../monitor-facts.ts';
import { probeFaultWords } from '../probe-fault.ts';
import {
  celsius,
  kelvin,
  kelvinPerMinute,
  percent,
  span,
  strengthRange,
  vapourStrength,
} from './numbers.ts';

/** Vapour strength at the head with bias and noise counted, as `88–93 % vol`. */
export function headStrengthWords(facts: MonitorFacts): string {
  const { head, bias, scale } = facts;
  if (head === null) return 'unknown strength';
  const sdK = Math.hypot(head.vapourSdK, bias.sdK);
  const { low, high } = vapourStrength(scale, head.vapourC - bias.meanK, sdK);
  return strengthRange(low, high);
}

function limitWords(facts: MonitorFacts): string {
  return `${facts.limitAbv} % vol (${celsius(facts.outlook.limitOnProbeC)} on this probe)`;
}

/** The evidence for the present stage, in words with numbers. */
export function stageBecause(facts: MonitorFacts): string {
  const { head, scale, plateau, stage } = facts;
  if (facts.fault !== null) {
    return `Staging waits: ${probeFaultWords[facts.fault]}. The last sure stage is kept.`;
  }
  if (head === null) return 'No reading of the head has come yet.';
  const azeotrope = `the azeotrope at ${scale.pressureKPa.toFixed(1)} kPa, ${celsius(scale.azeotropeC)}`;
  if (plateau.recededSinceS !== null && stage !== 'cool-down') {
    return `The head fell to ${celsius(head.bulbC)}, below the ${celsius(plateau.levelC ?? scale.azeotropeC)} it had held: vapour has receded from the bulb for ${span(facts.timeS - plateau.recededSinceS)}.`;
  }
  switch (stage) {
    case 'warm-up':
      return `The bulb is at ${celsius(head.bulbC)}, ${kelvin(scale.azeotropeC - head.bulbC)} below ${azeotrope}; no vapour bathes it yet.`;
    case 'first-fraction':
      return `Vapour bathes the bulb at ${celsius(head.bulbC)} (${azeotrope}); ${firstFractionWords(facts)}`;
    case 'main-fraction':
      return `The head is at ${celsius(head.bulbC)}, ${kelvin(facts.outlook.limitOnProbeC - head.vapourC)} below the limit of ${limitWords(facts)}, changing by ${kelvinPerMinute(head.rateKPerS)}: vapour of ${headStrengthWords(facts)}.`;
    case 'tail':
      return `The head is at ${celsius(head.bulbC)}, weaker than ${limitWords(facts)} with a probability of ${percent(facts.outlook.passed)}: vapour of ${headStrengthWords(facts)}.`;
    case 'cool-down':
      return `The head has stayed far below ${azeotrope}${facts.heat === 'off' ? ' after the heat was taken off' : ''}.`;
  }
}

function firstFractionWords(facts: MonitorFacts): string {
  const { firstFraction: progress, plateau } = facts;
  if (plateau.heldS === null) return 'it has not come to rest yet.';
  const amount = `${progress.done.toFixed(1)} of ${progress.wanted} ${progress.unit}`;
  const source = progress.estimated ? ' (estimated, nothing booked)' : '';
  return `${amount} of the first fraction so far${source}. Its end is your convention: light volatiles are too little to be seen by temperature.`;
}

/** What would change the call, in words with numbers. */
export function stageWouldChangeIf(facts: MonitorFacts): string {
  const { scale, outlook, plateau } = facts;
  if (facts.fault !== null) return 'Staging resumes where it was once good readings return.';
  if (plateau.recededSinceS !== null && facts.stage !== 'cool-down') {
    return `The stage goes on when the head is back near ${celsius(plateau.levelC ?? scale.azeotropeC)}; after some minutes below, it becomes the cool-down.`;
  }
  switch (facts.stage) {
    case 'warm-up':
      return `The first fraction begins when the bulb passes ${celsius(scale.azeotropeC - 5)} in vapour.`;
    case 'first-fraction':
      return `The main fraction begins when the head has held and ${facts.firstFraction.wanted} ${facts.firstFraction.unit} have been set apart; a head that holds above ${celsius(outlook.limitOnProbeC)} means no main fraction.`;
    case 'main-fraction':
      return `The tail begins when the head passes ${celsius(outlook.limitOnProbeC)}.`;
    case 'tail':
      return 'Stages go forward only; the run ends with the cool-down.';
    case 'cool-down':
      return 'Nothing: this is the last stage.';
  }
}
