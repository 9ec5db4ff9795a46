import {
  concludeFerment,
  type DistillingAdvice,
  distillingAdvice,
  type FermentVerdict,
  factsOfFerment,
  followFerment,
  gatherEvidence,
  type NinetyInterval,
  originOfFerment,
  readingsOfFerment,
  standingEntries,
  verdictOf,
} from '../ferment/index.ts';
import type { FermentRead, KeptFerment } from '../ferment-log/index.ts';
import {
  gatherSpans,
  tallyWarmth,
  usualWarmthBand,
  type WarmthBand,
  type WarmthSpan,
  type WarmthTally,
} from '../ferment-warmth/index.ts';
import { type FermentBalance, fermentBalance } from './ferment-balance.ts';

/** A ferment's week as it was kept. */
export interface FermentToStudy {
  readonly kept: KeptFerment;
  readonly warmth: {
    /** Null where no probe was ever in it. */
    readonly band: WarmthBand | null;
    readonly minutes: readonly WarmthSpan[];
  };
  readonly appVersion: string;
}

/** An entry that counts, its gravity at 20 °C. */
export interface FermentMoment {
  readonly timeH: number;
  readonly entryId: number;
  readonly read: FermentRead;
  readonly gravityAt20C: number | null;
}

/** What the readings up to a moment say. */
export interface JudgedMoment {
  readonly timeH: number;
  readonly state: FermentVerdict['state'];
  readonly strengthAbv: NinetyInterval;
  readonly gravity: NinetyInterval;
  readonly donePercent: NinetyInterval;
}

/** How warm it was on one day of its week, counted from its beginning. */
export interface FermentDay {
  readonly day: number;
  readonly tally: WarmthTally;
}

/** Everything that reports, worksheets, figures and tables say of a ferment's week. */
export interface FermentStudy extends FermentToStudy {
  readonly runId: string;
  readonly name: string;
  readonly startedAtIso: string;
  readonly moments: readonly FermentMoment[];
  readonly course: readonly JudgedMoment[];
  readonly verdict: FermentVerdict;
  readonly advice: DistillingAdvice;
  readonly band: WarmthBand;
  /** Of ten minutes each. */
  readonly stretches: readonly WarmthSpan[];
  readonly days: readonly FermentDay[];
  /** Null while its strength or its sugar is not known. */
  readonly balance: FermentBalance | null;
}

const [hourMs, dayH] = [3_600_000, 24];

/**
 * Works a ferment's week through once: what was read, how warm it was, what the judge says at the end and said along the way, and what
 * became of its sugar. Notes are left out: they may name people.
 *
 * @param ferment its log, the minutes of its warmth [°C] in any order
 *
 * Source: see the functions named.
 * @example
 * const kept = { fermentId: 'a', stated: { name: 'Pears', beganAtIso: '2026-05-01T08:00:00Z', volumeMl: 1000, sugarG: null, wentIn: '' }, corrections: [], entries: [], unreadableLines: 0 };
 * studyFerment({ kept, warmth: { band: null, minutes: [] }, appVersion: '0' }).verdict.state // => "not-started"
 */
export function studyFerment({ kept, warmth, appVersion }: FermentToStudy): FermentStudy {
  const withoutNotes: KeptFerment = {
    ...kept,
    entries: kept.entries.map((entry) => ({ ...entry, read: { ...entry.read, note: '' } })),
  };
  const readings = readingsOfFerment(kept);
  const facts = factsOfFerment(kept.stated);
  const { course, verdict } = judgeAlong(readings, facts);
  const stretches = gatherSpans(warmth.minutes);
  const band = warmth.band ?? usualWarmthBand;
  const { beganAtIso, name, volumeMl } = kept.stated;
  const origin = originOfFerment(kept, verdict, beganAtIso);
  return {
    kept: withoutNotes,
    warmth,
    appVersion,
    runId: kept.fermentId,
    name,
    startedAtIso: beganAtIso,
    moments: standingEntries(withoutNotes).map(({ timeH, entry: { entryId, read } }, index) => ({
      timeH: Math.max(0, timeH),
      entryId,
      read,
      gravityAt20C: readings[index]?.gravity ?? null,
    })),
    course,
    verdict,
    advice: distillingAdvice(kept, verdict),
    band,
    stretches,
    days: daysOf(stretches, band, Date.parse(beganAtIso)),
    balance: origin === null ? null : fermentBalance(origin, volumeMl),
  };
}

/** What was said along the way and is said at the end, in one pass: thousands of possible ferments are weighed at each reading. */
function judgeAlong(
  readings: ReturnType<typeof readingsOfFerment>,
  facts: ReturnType<typeof factsOfFerment>,
): Pick<FermentStudy, 'course' | 'verdict'> {
  const course: JudgedMoment[] = [];
  let last: Parameters<typeof verdictOf>[0] = null;
  for (const belief of followFerment(gatherEvidence(readings), facts)) {
    const concluded = concludeFerment(belief, facts);
    const { state, strengthAbv, gravity, donePercent } = concluded;
    last = { belief, concluded };
    // The belief counts from the log's beginning; people count as the log does.
    const timeH = belief.evidence.at(-1)?.timeH ?? belief.timeH;
    course.push({ timeH, state, strengthAbv, gravity, donePercent });
  }
  return { course, verdict: verdictOf(last, readings, facts) };
}

function daysOf(
  stretches: readonly WarmthSpan[],
  band: WarmthBand,
  beganMs: number,
): readonly FermentDay[] {
  const days = new Map<number, WarmthSpan[]>();
  for (const stretch of stretches) {
    const day = 1 + Math.floor((Date.parse(stretch.atIso) - beganMs) / (dayH * hourMs));
    const known = days.get(Math.max(1, day));
    if (known === undefined) days.set(Math.max(1, day), [stretch]);
    else known.push(stretch);
  }
  return [...days].flatMap(([day, spans]) => {
    const tally = tallyWarmth(spans, band);
    return tally === null ? [] : [{ day, tally }];
  });
}
