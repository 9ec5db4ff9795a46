import type { StageSpan, Verdicts } from '../../snapshot/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { celsius, span } from './numbers.ts';
import { headStrengthWords } from './stage-words.ts';

/** Whether there was a main fraction at the strength asked for, and why. */
export function concludeVerdict(
  facts: MonitorFacts,
  spans: readonly StageSpan[],
): Verdicts['verdict'] {
  const { plateau, outlook, scale } = facts;
  const limit = `${facts.limitAbv} % vol (${celsius(outlook.limitOnProbeC)} on this probe)`;
  const main = spans.find((item) => item.stage === 'main-fraction');
  if (main !== undefined) {
    const lasted = (main.toS ?? facts.timeS) - main.fromS;
    return {
      mainFraction: true,
      because: `The head held at ${celsius(plateau.lowestLevelC ?? scale.azeotropeC)}, stronger than ${limit}, for ${span(lasted)}.`,
    };
  }
  if (plateau.arrivedS === null) {
    return { mainFraction: false, because: 'No vapour reached the thermometer.' };
  }
  if (plateau.lowestLevelC === null) {
    return {
      mainFraction: false,
      because: 'Vapour reached the thermometer, but the head has not held yet.',
    };
  }
  if (facts.stage === 'first-fraction') {
    return {
      mainFraction: false,
      because: 'The first fraction had not ended by the convention set.',
    };
  }
  if (plateau.lowestLevelC < outlook.limitOnProbeC) {
    return {
      mainFraction: false,
      because: `No main fraction at ${facts.limitAbv} % vol or more: the head held at ${celsius(plateau.lowestLevelC)}, hardly stronger than ${limit}, and passed it before the first fraction had ended. More plates or reflux, a stronger charge or a shorter first fraction would help.`,
    };
  }
  return {
    mainFraction: false,
    because: `No main fraction at ${facts.limitAbv} % vol or more with this rig: the lowest the head held at was ${celsius(plateau.lowestLevelC)}, above ${limit}; vapour now ${headStrengthWords(facts)}. Too few plates, too little reflux or a weak charge; packing, lagging less, easing the heat or a stronger charge would help.`,
  };
}
