import type { ForecastSecond } from '../../../../shared-core/monitor/conclude/forecast-second.ts';
import { createMarksLedger } from '../../../../shared-core/monitor/marks-ledger.ts';
import type { Situation } from '../../../../shared-core/monitor/situation/situation.ts';
import type { MarkBody, RunSettings } from '../../../../shared-core/run/index.ts';
import {
  createTwin,
  heightModelSdK,
  type Observation,
  potReading,
  type Twin,
  type TwinOutlook,
} from '../../../../shared-core/twin/index.ts';
import { factsOf } from '../words/facts.ts';

/** When vapour arrives at the head, bathes the bulb, and has come to rest [s]. */
const arrivedS = 900;
export const bathedS = 910;
const heldS = 960;
/** The first whole minute from which vapour has been held for two. */
export const settledS = 1080;

type Otherwise = Partial<Omit<ForecastSecond, 'timeS' | 'situation' | 'head'>> & {
  readonly head?: Partial<ForecastSecond['head']>;
  readonly situation?: Partial<Situation>;
};
/** What a test wants otherwise in a second. */
export type Changes = (timeS: number) => Otherwise;

/** A second of a quiet run whose head stands at 78.2 °C from the bath on, but for what a test wants otherwise. */
export function secondAt(timeS: number, { head, situation, ...rest }: Otherwise = {}) {
  const isBathed = timeS >= bathedS;
  const facts = factsOf(
    {},
    {
      head: { ...head },
      situation: {
        arrivedS: timeS >= arrivedS ? arrivedS : null,
        bathedS: isBathed ? bathedS : null,
        heldS: timeS >= heldS ? heldS : null,
        wetS: Math.max(0, timeS - bathedS),
        heldWetS: Math.max(0, timeS - heldS),
        calmS: Math.max(0, timeS - heldS),
        ...situation,
      },
    },
  );
  if (facts.head === null) throw new Error('There is a head.');
  const second: ForecastSecond = {
    timeS,
    stage: isBathed ? 'main-fraction' : 'warm-up',
    head: facts.head,
    situation: facts.situation,
    scale: facts.scale,
    statedSdK: 0.3,
    pressureSdK,
    potC: null,
    receiverMl: null,
    nothingCollected: false,
    nothingCollectedByMarks: false,
    suspended: false,
    ...rest,
  };
  return second;
}

const { settings, scale } = factsOf();
const { azeotropeC } = scale;
const limitHeightK = scale.limitC - azeotropeC;
/** As the charge is on a bench where the start of heating was seen in the first second. */
export const seenFromStart = { tookS: bathedS - 1, eased: null } as const;

/** Of the 0.3 K that are stated so much is the air pressure's. */
const pressureSdK = 0.2;

/** A twin of this still that was shown all this by hand, and what it expects. */
export function twinShown(
  observations: readonly Observation[],
  heatUp: Parameters<typeof createTwin>[1] = seenFromStart,
  forSettings: RunSettings = settings,
): Pick<Twin, 'outlook'> & { readonly expects: (boiledS: number) => ReturnType<Twin['outlook']> } {
  const twin = createTwin(forSettings, heatUp, Math.hypot(0.3, heightModelSdK), limitHeightK);
  for (const observation of observations) {
    twin.see(observation);
  }
  twin.update(Number.POSITIVE_INFINITY);
  return {
    outlook: twin.outlook,
    expects: (boiledS) => twin.outlook(boiledS, limitHeightK, null),
  };
}

const about = (value: number) => ({ value, low: 0.9 * value, high: 1.1 * value });

/** What a twin expects, each a tenth either way, but for what a test wants otherwise. */
export function outlookOf(changes: Partial<TwinOutlook> = {}): TwinOutlook {
  return {
    limitInS: about(1000),
    limitInIfEasedS: about(1300),
    distillateMlAtLimit: about(40),
    collectedMl: about(12),
    potMl: about(290),
    potMoleFraction: { value: 0.02, low: 0.01, high: 1.01 },
    flowMlPerS: 0.03,
    bias: { mean: 0, sd: 1 },
    headSoonK: { mean: 0, sd: 0.1 },
    stopMoleFraction: null,
    volumeWouldNarrow: 0.3,
    ...changes,
  };
}

/** What a head at 78.2 °C shows at a time of boiling. */
export function headSeen(boiledS: number, vapourC = 78.2): Observation {
  return { kind: 'head', boiledS, value: vapourC - azeotropeC, sd: 0.04 };
}

export function potSeen(boiledS: number, potC: number): Observation {
  const offsetSdK = Math.hypot(0.3, heightModelSdK);
  return potReading(boiledS, potC - azeotropeC, { offsetSdK, pressureSdK });
}

/** A ledger with a pen. */
export function markable() {
  const marks = createMarksLedger();
  let markId = 0;
  const mark = (timeS: number, body: MarkBody): void => {
    markId += 1;
    marks.add({ kind: 'mark', timeS, markId, mark: body });
  };
  return { marks, mark };
}
