import { strengthFromMoleFraction } from '../../alcoholometry/index.ts';
import type { ForecastView } from '../../stages/index.ts';
import type { TwinOutlook } from '../../twin/index.ts';
import type { Estimate } from '../../uncertainty/index.ts';
import { mapEstimate } from '../../uncertainty/index.ts';
import { doubtWords, passedWords, volumeWouldHelp } from '../words/forecast-words.ts';
import type { ForecastCheck } from './forecast-check.ts';
import type { ForecastSecond } from './forecast-second.ts';

/** The twin's outlook as people read it: in run time, as wide as it has earned, and with what would help. */
export function composeForecast(
  { timeS, stage }: ForecastSecond,
  ahead: TwinOutlook,
  check: ForecastCheck,
  lastVolumeS: number,
): ForecastView {
  const open = stage === 'first-fraction' || stage === 'main-fraction';
  const end = (left: Estimate): Estimate | null => {
    const range = open ? check.widened(left) : null;
    if (range === null) return null;
    return { value: timeS + range.value, low: timeS + range.low, high: timeS + range.high };
  };
  const mainFractionEndS = end(ahead.limitInS);
  return {
    madeS: timeS,
    mainFractionEndS,
    mainFractionEndIfEasedS: end(ahead.limitInIfEasedS),
    distillateMlAtEnd: open ? ahead.distillateMlAtLimit : null,
    potStrengthAbv: strength(ahead.potMoleFraction),
    potVolumeMl: ahead.potMl,
    collectedMl: ahead.collectedMl,
    wouldHelp: open ? volumeWouldHelp(ahead, timeS - lastVolumeS) : null,
    doubt: open ? doubtOf(ahead, check, mainFractionEndS !== null) : null,
  };
}

function doubtOf({ limitInS }: TwinOutlook, check: ForecastCheck, isTold: boolean): string | null {
  if (limitInS.value <= 0) return passedWords();
  const doubt = check.doubt();
  return doubt === null ? null : doubtWords(doubt, isTold);
}

/** Guesses may overshoot pure ethanol by rounding. */
function strength(moleFraction: Estimate): Estimate {
  return mapEstimate(moleFraction, (x) => strengthFromMoleFraction(Math.min(1, x)));
}
