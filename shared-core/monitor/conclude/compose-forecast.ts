import { strengthFromMoleFraction } from '../../alcoholometry/index.ts';
import type { ForecastView } from '../../stages/index.ts';
import type { TwinOutlook } from '../../twin/index.ts';
import type { Estimate } from '../../uncertainty/index.ts';
import { mapEstimate } from '../../uncertainty/index.ts';
import { doubtWords, volumeWouldHelp } from '../words/forecast-words.ts';
import type { ForecastCheck } from './forecast-check.ts';
import type { ForecastSecond } from './forecast-second.ts';

/** The twin's outlook as people read it: in run time, as wide as it has earned, and with what would help. */
export function composeForecast(
  { timeS, stage, situation }: ForecastSecond,
  ahead: TwinOutlook,
  check: ForecastCheck,
  lastVolumeS: number,
): ForecastView {
  const open = stage === 'first-fraction' || stage === 'main-fraction';
  const { bathedS, wetS } = situation;
  const dryShare = bathedS === null ? 0 : 1 - wetS / Math.max(1, timeS - bathedS, wetS);
  const end = (left: Estimate): Estimate | null => {
    const range = open ? check.widened(left, dryShare) : null;
    if (range === null) return null;
    return { value: timeS + range.value, low: timeS + range.low, high: timeS + range.high };
  };
  const mainFractionEndS = end(ahead.limitInS);
  const misfit = open ? check.misfit() : null;
  return {
    madeS: timeS,
    mainFractionEndS,
    mainFractionEndIfEasedS: end(ahead.limitInIfEasedS),
    distillateMlAtEnd: open ? ahead.distillateMlAtLimit : null,
    potStrengthAbv: strength(ahead.potMoleFraction),
    potVolumeMl: ahead.potMl,
    collectedMl: ahead.collectedMl,
    wouldHelp: open ? volumeWouldHelp(ahead, timeS - lastVolumeS) : null,
    doubt: misfit === null ? null : doubtWords(misfit, mainFractionEndS !== null),
  };
}

/** Guesses may overshoot pure ethanol by rounding. */
function strength(moleFraction: Estimate): Estimate {
  return mapEstimate(moleFraction, (x) => strengthFromMoleFraction(Math.min(1, x)));
}
