import { moleFractionFromStrength, strengthFromMoleFraction } from '../../alcoholometry/index.ts';
import type { RunSettings } from '../../run/index.ts';
import type { ForecastView } from '../../stages/index.ts';
import type { Estimate } from '../../uncertainty/index.ts';
import type { MarksLedger } from '../marks-ledger.ts';
import { composeForecast } from './compose-forecast.ts';
import { createForecastCheck } from './forecast-check.ts';
import type { ForecastSecond } from './forecast-second.ts';
import { createTwinFollower, type LookAhead } from './twin-follower.ts';

/** Shows twins what is seen and turns their outlook into the forecast people read. */
export interface Forecaster {
  second(input: ForecastSecond): void;
  view(): ForecastView | null;
  flowMlPerS(): number | null;
  /** Strength of the head vapour to stop at when purity is weighed against recovery; null otherwise. */
  stopStrengthAbv(): number | null;
}

/** Fewer minutes of a held head do not tell a good column from a scale that is off; chosen here. */
const enoughBlocks = 4;

/**
 * Two twins where a balance or a probe in the pot spoke before vapour came. The one that hears them forecasts better while
 * they are right, and tells people what is ahead. The other hears the head and the people alone, and looks ahead as soon as it is
 * through, so no channel that stops or lies moves it, nor makes it wait: calls to take the heat off hang on it.
 */
export function createForecaster(settings: RunSettings, marks: MarksLedger): Forecaster {
  const { stop } = settings;
  const leastMeanMoleFraction =
    stop.kind === 'strength' ? null : moleFractionFromStrength(stop.leastMeanStrengthAbv);
  const check = createForecastCheck();
  const alone = createTwinFollower(settings, marks, leastMeanMoleFraction);
  const hearing = createTwinFollower(settings, marks, null);
  let hears = false;
  /** What the twins saw ahead last, by the head alone and by all that is heard. */
  let byHead: LookAhead | null = null;
  let ahead: LookAhead | null = null;
  let view: ForecastView | null = null;
  const told = () => (hears ? hearing : alone);

  const lastVolumeS = (): number =>
    Math.max(marks.collectedS() ?? Number.NEGATIVE_INFINITY, told().receiverSeenS());

  const tell = ({ from, boiledS, outlook }: LookAhead, byHeadPotMl: Estimate): void => {
    const open = from.stage === 'first-fraction' || from.stage === 'main-fraction';
    if (open) check.see(from, boiledS, outlook);
    const potMl = lessOf(outlook.potMl, byHeadPotMl);
    view = composeForecast(from, { ...outlook, potMl }, check, lastVolumeS());
  };

  return {
    second: (input) => {
      const isBefore = input.situation.bathedS === null;
      if (isBefore) hears ||= input.potC !== null || input.receiverMl !== null;
      const isHeadIn = alone.second(byHeadAlone(input));
      if (isHeadIn) byHead = alone.lookAhead();
      const isAllIn = isBefore || hears ? hearing.second(input) : isHeadIn;
      if (isAllIn) {
        ahead = hears ? hearing.lookAhead() : byHead;
        const mistakenFromS = ahead?.mistakenFromS ?? null;
        if (mistakenFromS !== null) check.forgetFrom(mistakenFromS);
      }
      // The twins take their own times to look ahead from one minute: what they say of it is put together.
      if (!(isHeadIn || isAllIn) || byHead === null || ahead?.from.timeS !== byHead.from.timeS)
        return;
      tell(ahead, byHead.outlook.potMl);
    },
    view: () => view,
    flowMlPerS: () => told().outlook()?.flowMlPerS ?? null,
    stopStrengthAbv: () => {
      const moleFraction = alone.outlook()?.stopMoleFraction ?? null;
      if (moleFraction === null || alone.headBlocks() < enoughBlocks) return null;
      return strengthFromMoleFraction(Math.min(1, moleFraction));
    },
  };
}

/** The second without what a channel says. */
function byHeadAlone(input: ForecastSecond): ForecastSecond {
  const nothingCollected = input.nothingCollectedByMarks;
  const isAlone = input.potC === null && input.receiverMl === null;
  if (isAlone && input.nothingCollected === nothingCollected) return input;
  return { ...input, potC: null, receiverMl: null, nothingCollected };
}

/** A pot is called nearly dry if it may be for all that one of the two knows. */
function lessOf(one: Estimate, other: Estimate): Estimate {
  return other.low < one.low ? other : one;
}
