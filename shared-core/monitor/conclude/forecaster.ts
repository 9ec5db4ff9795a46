import { moleFractionFromStrength, strengthFromMoleFraction } from '../../alcoholometry/index.ts';
import type { RunSettings } from '../../run/index.ts';
import type { ForecastView } from '../../stages/index.ts';
import {
  createTwin,
  heightModelSdK,
  potSdK,
  receiverEveryS,
  receiverSdMl,
  type Twin,
  type TwinOutlook,
} from '../../twin/index.ts';
import type { MarksLedger } from '../marks-ledger.ts';
import type { VapourScale } from '../situation/vapour-scale.ts';
import { composeForecast } from './compose-forecast.ts';
import { createForecastCheck } from './forecast-check.ts';
import type { ForecastSecond } from './forecast-second.ts';
import { createTwinFeed, type TwinFeed } from './twin-feed.ts';

/** Feeds the twin with what is seen and turns its outlook into the forecast people read. */
export interface Forecaster {
  second(input: ForecastSecond): void;
  view(): ForecastView | null;
  flowMlPerS(): number | null;
  /** Strength of the head vapour to stop at when purity is weighed against recovery; null otherwise. */
  stopStrengthAbv(): number | null;
}

const everyS = 60;
const settledS = 120;
const enoughBlocks = 4;
/** A first reading warmer than this was taken after heating had begun [°C]. */
const coldC = 40;

export function createForecaster(settings: RunSettings, marks: MarksLedger): Forecaster {
  const leastMeanMoleFraction =
    settings.stop.kind === 'strength'
      ? null
      : moleFractionFromStrength(settings.stop.leastMeanStrengthAbv);
  const check = createForecastCheck();
  let feed: TwinFeed | null = null;
  let boiledS = 0;
  let refluxedS = 0;
  let lastReceiverS = Number.NEGATIVE_INFINITY;
  let firstC: number | null = null;
  let firstS = 0;
  let headBlocks = 0;
  let outlook: TwinOutlook | null = null;
  let view: ForecastView | null = null;

  const begin = (input: ForecastSecond, bathedS: number): Twin => {
    const { heat, firstOnS } = marks.heatUntil(input.timeS);
    const startS = firstOnS ?? (firstC !== null && firstC < coldC ? firstS : null);
    const tookS = startS === null ? null : bathedS - startS;
    const eased = heat === 'unknown' ? null : heat === 'eased';
    // The twin's offset takes up the bias and what its own head is off: it cannot tell them apart.
    const offsetSdK = Math.hypot(input.statedSdK, heightModelSdK);
    return createTwin(settings, { tookS, eased }, offsetSdK, limitHeightK(input.scale));
  };

  const lastVolumeS = (): number =>
    Math.max(marks.collectedS() ?? Number.NEGATIVE_INFINITY, lastReceiverS);

  const seeReceiver = (into: TwinFeed, { timeS, receiverMl }: ForecastSecond): void => {
    if (receiverMl === null || receiverMl < 1 || timeS - lastReceiverS < receiverEveryS) return;
    lastReceiverS = timeS;
    into.show({ kind: 'volume', boiledS, value: receiverMl, sd: receiverSdMl });
  };

  const seeBlock = (into: TwinFeed, { head, scale, potC, situation }: ForecastSecond): void => {
    if (situation.heldWetS < settledS || situation.calmS < everyS) return;
    const value = head.vapourC - scale.azeotropeC;
    into.show({ kind: 'head', boiledS, value, sd: head.vapourSdK });
    headBlocks += 1;
    if (potC !== null) {
      into.show({ kind: 'pot', boiledS, value: potC - scale.azeotropeC, sd: potSdK });
    }
  };

  return {
    second: (input) => {
      const { timeS, head, situation } = input;
      if (firstC === null) {
        firstC = head.bulbC;
        firstS = timeS;
      }
      const { bathedS } = situation;
      if (bathedS === null) return;
      if (input.stage === 'cool-down' || input.suspended) return;
      feed ??= createTwinFeed(() => begin(input, bathedS), marks);
      if (input.nothingCollected && situation.recededSinceS === null) refluxedS += 1;
      boiledS = Math.max(boiledS, situation.wetS - refluxedS);
      feed.showMarks(boiledS, outlook?.flowMlPerS ?? null);
      if (timeS % everyS !== 0) return;
      seeReceiver(feed, input);
      const open = input.stage === 'first-fraction' || input.stage === 'main-fraction';
      if (open && situation.recededSinceS === null) seeBlock(feed, input);
      if (situation.heldWetS < settledS) return;
      const twin = feed.twin();
      twin.update();
      outlook = twin.outlook(boiledS, limitHeightK(input.scale), leastMeanMoleFraction);
      if (open) check.see(boiledS, outlook.limitInS);
      view = composeForecast(input, outlook, check, lastVolumeS());
    },
    view: () => view,
    flowMlPerS: () => outlook?.flowMlPerS ?? null,
    stopStrengthAbv: () =>
      outlook === null || outlook.stopMoleFraction === null || headBlocks < enoughBlocks
        ? null
        : strengthFromMoleFraction(Math.min(1, outlook.stopMoleFraction)),
  };
}

function limitHeightK(scale: VapourScale): number {
  return scale.limitC - scale.azeotropeC;
}
