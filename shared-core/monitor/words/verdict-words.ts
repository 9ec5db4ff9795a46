import type { Verdicts } from '../../snapshot/index.ts';
import type { StageSpan } from '../../stages/index.ts';
import { worded } from '../../wording/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { settledAfterS } from '../patience.ts';
import { explainedK } from '../situation/bulb-doubt.ts';
import { statedScaleSdK } from '../situation/scale-belief.ts';
import { celsius, span, strengthRange, vapourStrength } from './numbers.ts';
import { limitWords } from './stage-words.ts';

/** A carelessly set pressure or probe may be off by so many times what its stated doubt explains; chosen here. */
const careless = 2;

type Verdict = Verdicts['verdict'];

/** Whether there was a main fraction at the strength asked for, and why. */
export function concludeVerdict(facts: MonitorFacts, spans: readonly StageSpan[]): Verdict {
  const { situation, outlook, stage } = facts;
  const main = spans.find((item) => item.stage === 'main-fraction');
  if (main !== undefined) return judgeMainFraction(facts, main);
  if (situation.arrivedS === null) return noMain(worded('No vapour reached the thermometer.'));
  const lowestC = situation.lowestLevelC;
  if (lowestC === null) {
    return noMain(worded('Vapour reached the thermometer, but the head has not held yet.'));
  }
  const impossible = impossibleLevel(facts);
  if (impossible !== null) return impossible;
  if (stage === 'first-fraction') {
    return noMain(worded('The first fraction had not ended by the convention set.'));
  }
  return lowestC < outlook.limitOnProbeC
    ? strongInFirstOnly(facts, lowestC, spans)
    : neverStrong(facts, lowestC);
}

function noMain(because: string): Verdict {
  return { mainFraction: false, because };
}

/** Strong enough it was, but only while the first fraction was being set apart. */
function strongInFirstOnly(
  facts: MonitorFacts,
  lowestC: number,
  spans: readonly StageSpan[],
): Verdict {
  const limit = facts.limitAbv;
  const held = worded('the head held at {lowestLevel}, stronger than {limit}', {
    lowestLevel: celsius(lowestC),
    limit: limitWords(facts),
  });
  const isPassed = spans.some(({ stage }) => stage === 'tail');
  return noMain(
    isPassed
      ? worded(
          'No main fraction at {limit} % vol or more: {held}, but was judged to have passed it when the first fraction ended. More plates or reflux, a stronger charge or a shorter first fraction would help.',
          { limit, held },
        )
      : worded(
          'No main fraction at {limit} % vol or more: {held}, but the still cooled down before the first fraction had ended by the convention set. A shorter first fraction or a longer run would help.',
          { limit, held },
        ),
  );
}

function neverStrong(facts: MonitorFacts, lowestC: number): Verdict {
  return noMain(
    worded(
      'No main fraction at {limit} % vol or more with this rig: the lowest the head held at was {lowestLevel}, above {limitWords}. {cause}',
      {
        limit: facts.limitAbv,
        lowestLevel: celsius(lowestC),
        limitWords: limitWords(facts),
        cause: causeWords(facts, lowestC),
      },
    ),
  );
}

/** Weaker than this the vapour is little else than steam [% vol]; chosen here. */
const steamAbv = 20;

/** The strongest vapour that held, and what would have made it stronger. */
function causeWords({ scale, bias, settings }: MonitorFacts, lowestC: number): string {
  const sdK = Math.hypot(bias.sdK, scale.modelSdK(lowestC - bias.meanK));
  const { low, high } = vapourStrength(scale, lowestC - bias.meanK, sdK);
  const strongest = worded('Vapour at that temperature has {strength}.', {
    strength: strengthRange(low, high),
  });
  if (high < steamAbv)
    return worded('{strongest} The charge held hardly any alcohol, or had lost it.', { strongest });
  return settings.rig.plates === 0
    ? worded(
        '{strongest} A still without a column gives no more from this charge; a column or a stronger charge would help.',
        { strongest },
      )
    : worded(
        '{strongest} Too few plates, too little reflux or a weak charge; packing, lagging less, easing the heat or a stronger charge would help.',
        { strongest },
      );
}

/** A level that no ethanol–water vapour can have vouches for nothing. */
function impossibleLevel({ situation, scale, settings }: MonitorFacts): Verdict | null {
  const heldC = situation.lowestLevelC ?? situation.levelC ?? scale.azeotropeC;
  const belowK = scale.azeotropeC - heldC;
  const doubtK = careless * explainedK(statedScaleSdK(settings, scale));
  if (belowK <= doubtK) return null;
  return noMain(
    worded(
      "No main fraction that can be vouched for: the head stood at {held}, {below} K below the azeotrope ({azeotrope} at {pressure} kPa), where no ethanol–water vapour condenses; pressure and probe explain {doubt} K at most. Check the air pressure, the probe's correction and whether vapour bathed the bulb.",
      {
        held: celsius(heldC),
        below: belowK.toFixed(1),
        azeotrope: celsius(scale.azeotropeC),
        pressure: scale.pressureKPa.toFixed(1),
        doubt: doubtK.toFixed(1),
      },
    ),
  );
}

/** A main fraction that was called must have lasted, and at a temperature that such vapour can have. */
function judgeMainFraction(facts: MonitorFacts, main: StageSpan): Verdict {
  const impossible = impossibleLevel(facts);
  if (impossible !== null) return impossible;
  const { situation, scale } = facts;
  const limit = limitWords(facts);
  const heldC = situation.lowestLevelC ?? situation.levelC ?? scale.azeotropeC;
  const lastedS = (main.toS ?? facts.timeS) - main.fromS;
  if (lastedS < settledAfterS) {
    return noMain(
      worded(
        'No main fraction at {limit} % vol or more: after the first fraction the head was stronger than {limitWords} for only {lasted}; it takes {leastFraction} s to count as held.',
        {
          limit: facts.limitAbv,
          limitWords: limit,
          lasted: span(lastedS),
          leastFraction: settledAfterS,
        },
      ),
    );
  }
  return {
    mainFraction: true,
    because: worded(
      'The vapour stayed stronger than {limit} for {lasted}; the lowest the head held at was {held}.',
      { limit, lasted: span(lastedS), held: celsius(heldC) },
    ),
  };
}
