import type { Verdicts } from '../../snapshot/index.ts';
import type { StageSpan } from '../../stages/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { statedScaleSdK } from '../situation/scale-belief.ts';
import { celsius, span, strengthRange, vapourStrength } from './numbers.ts';
import { limitWords } from './stage-words.ts';

/** Less is a passing glimpse, not a fraction; chosen here, two or three bulb lags. */
const leastFractionS = 30;
/** Bias that a carelessly set pressure or probe may have beyond its stated doubt [K]; chosen here. */
const leastDoubtK = 2;
const doubtFactor = 4;

/** Whether there was a main fraction at the strength asked for, and why. */
export function concludeVerdict(
  facts: MonitorFacts,
  spans: readonly StageSpan[],
): Verdicts['verdict'] {
  const { situation, outlook } = facts;
  const limit = limitWords(facts);
  const main = spans.find((item) => item.stage === 'main-fraction');
  if (main !== undefined) return judgeMainFraction(facts, main, limit);
  if (situation.arrivedS === null) {
    return {
      mainFraction: false,
      because: 'No vapour reached the thermometer.',
    };
  }
  if (situation.lowestLevelC === null) {
    return {
      mainFraction: false,
      because: 'Vapour reached the thermometer, but the head has not held yet.',
    };
  }
  const impossible = impossibleLevel(facts);
  if (impossible !== null) return impossible;
  if (facts.stage === 'first-fraction') {
    return {
      mainFraction: false,
      because: 'The first fraction had not ended by the convention set.',
    };
  }
  if (situation.lowestLevelC < outlook.limitOnProbeC) {
    const held = `the head held at ${celsius(situation.lowestLevelC)}, stronger than ${limit}`;
    const isPassed = spans.some(({ stage }) => stage === 'tail');
    return {
      mainFraction: false,
      because: isPassed
        ? `No main fraction at ${facts.limitAbv} % vol or more: ${held}, but was judged to have passed it when the first fraction ended. More plates or reflux, a stronger charge or a shorter first fraction would help.`
        : `No main fraction at ${facts.limitAbv} % vol or more: ${held}, but the still cooled down before the first fraction had ended by the convention set. A shorter first fraction or a longer run would help.`,
    };
  }
  return {
    mainFraction: false,
    because: `No main fraction at ${facts.limitAbv} % vol or more with this rig: the lowest the head held at was ${celsius(situation.lowestLevelC)}, above ${limit}. ${causeWords(facts, situation.lowestLevelC)}`,
  };
}

/** Weaker than this the vapour is little else than steam [% vol]; chosen here. */
const steamAbv = 20;

/** The strongest vapour that held, and what would have made it stronger. */
function causeWords({ scale, bias, settings }: MonitorFacts, lowestC: number): string {
  const sdK = Math.hypot(bias.sdK, scale.modelSdK(lowestC - bias.meanK));
  const { low, high } = vapourStrength(scale, lowestC - bias.meanK, sdK);
  const strongest = `Vapour at that temperature has ${strengthRange(low, high)}.`;
  if (high < steamAbv) return `${strongest} The charge held hardly any alcohol, or had lost it.`;
  return settings.rig.plates === 0
    ? `${strongest} A still without a column gives no more from this charge; a column or a stronger charge would help.`
    : `${strongest} Too few plates, too little reflux or a weak charge; packing, lagging less, easing the heat or a stronger charge would help.`;
}

/** A level that no ethanol–water vapour can have vouches for nothing. */
function impossibleLevel({ situation, scale, settings }: MonitorFacts): Verdicts['verdict'] | null {
  const heldC = situation.lowestLevelC ?? situation.levelC ?? scale.azeotropeC;
  const belowK = scale.azeotropeC - heldC;
  const doubtK = Math.max(leastDoubtK, doubtFactor * statedScaleSdK(settings, scale));
  if (belowK <= doubtK) return null;
  return {
    mainFraction: false,
    because: `No main fraction that can be vouched for: the head stood at ${celsius(heldC)}, ${belowK.toFixed(1)} K below the azeotrope (${celsius(scale.azeotropeC)} at ${scale.pressureKPa.toFixed(1)} kPa), where no ethanol–water vapour condenses; pressure and probe explain ${doubtK.toFixed(1)} K at most. Check the air pressure, the probe's correction and whether vapour bathed the bulb.`,
  };
}

/** A main fraction that was called must have lasted, and at a temperature that such vapour can have. */
function judgeMainFraction(
  facts: MonitorFacts,
  main: StageSpan,
  limit: string,
): Verdicts['verdict'] {
  const impossible = impossibleLevel(facts);
  if (impossible !== null) return impossible;
  const { situation, scale } = facts;
  const heldC = situation.lowestLevelC ?? situation.levelC ?? scale.azeotropeC;
  const lastedS = (main.toS ?? facts.timeS) - main.fromS;
  if (lastedS < leastFractionS) {
    return {
      mainFraction: false,
      because: `No main fraction at ${facts.limitAbv} % vol or more: after the first fraction the head was stronger than ${limit} for only ${span(lastedS)}; it takes ${leastFractionS} s to count as held.`,
    };
  }
  return {
    mainFraction: true,
    because: `The vapour stayed stronger than ${limit} for ${span(lastedS)}; the lowest the head held at was ${celsius(heldC)}.`,
  };
}
