import {
  type Alarm,
  alarmCatalogue,
  booksOfRun,
  heatOffForGoodS,
  type Mark,
  type PlateauBand,
  type RunInput,
  type RunSettings,
  type RunStudy,
  standingMarks,
  type Verdicts,
} from '#shared-core';

/** What is needed of a run that has ended. */
export interface EndedRun {
  readonly settings: RunSettings;
  readonly inputs: readonly RunInput[];
  readonly verdicts: Verdicts;
  readonly endS: number;
  readonly plateau: PlateauBand;
}

/** How the heat-off prompt and the hand that took the heat off went together. */
export type Reaction =
  | { readonly kind: 'answered'; readonly raisedS: number; readonly reactionS: number }
  | { readonly kind: 'before-prompt' }
  | { readonly kind: 'not-marked'; readonly raisedS: number }
  | { readonly kind: 'no-prompt' };

/** What came over although the vapour was weaker than the limit already. */
export type AfterLimit =
  | { readonly kind: 'not-reached' }
  | { readonly kind: 'none' }
  /** Volume [mL]; null where no volume of that receiver was written down. */
  | {
      readonly kind: 'some';
      readonly overS: number;
      readonly volumeMl: { low: number; high: number } | null;
    };

type DebriefCut = RunStudy['books']['cuts'][number];

export interface Debrief {
  readonly cuts: readonly DebriefCut[];
  readonly reaction: Reaction;
  readonly afterLimit: AfterLimit;
}

/** What the class wants to know right after the run: collected, how strong, how quickly, how much too late. */
export function debriefOf(run: EndedRun, lateMarks: readonly Mark[] = []): Debrief {
  const { settings, inputs, verdicts, endS } = run;
  const all = [...inputs, ...lateMarks];
  const { cuts } = booksOfRun({ settings, inputs: all, verdicts, endS });
  const marks = standingMarks(inputs);
  const offS = heatOffForGoodS(marks);
  const reaction = reactionOf(verdicts, marks, offS);
  return { cuts, reaction, afterLimit: afterLimitOf(run, cuts, offS) };
}

function reactionOf(verdicts: Verdicts, marks: readonly Mark[], offS: number | null): Reaction {
  const asked = verdicts.alarms
    .filter(({ alarm }) => alarmCatalogue[alarm satisfies Alarm].asksForHeatOff)
    .map(({ raisedS }) => raisedS)
    .sort((a, b) => a - b);
  const raisedS = asked[0];
  if (raisedS === undefined) return { kind: offS === null ? 'no-prompt' : 'before-prompt' };
  const answer = marks.find(({ mark, timeS }) => mark.type === 'heat-off' && timeS >= raisedS);
  return answer === undefined
    ? { kind: 'not-marked', raisedS }
    : { kind: 'answered', raisedS, reactionS: answer.timeS - raisedS };
}

/** Above the limit for so long, it is passed: a drop of cold reflux or a bump of the bulb is shorter. */
const staysS = 15;
/** How far a receiver's mean rate may be off at its end: common practice, no source. */
const rateShare = 0.3;

/** A flame that was put back gave distillate on: what counts is when the heat was off for good. */
function afterLimitOf(run: EndedRun, cuts: readonly DebriefCut[], offS: number | null): AfterLimit {
  const passedS = limitPassedS(run);
  if (passedS === null) return { kind: 'not-reached' };
  if (offS !== null && offS < passedS) return { kind: 'none' };
  const overS = (offS ?? run.endS) - passedS;
  const cut = cuts.find(({ fromS, toS }) => passedS >= fromS && passedS <= toS);
  const volumeMl = cut && volumeOf(cut);
  const vapourS = run.verdicts.events.find(({ event }) => event === 'vapour-arrived')?.timeS ?? 0;
  const fillingS = cut ? Math.min(cut.toS, offS ?? run.endS) - Math.max(cut.fromS, vapourS) : 0;
  if (!volumeMl || fillingS <= overS) return { kind: 'some', overS, volumeMl: null };
  const meanMl = (volumeMl / fillingS) * overS;
  return {
    kind: 'some',
    overS,
    volumeMl: { low: (1 - rateShare) * meanMl, high: (1 + rateShare) * meanMl },
  };
}

/** When the head, as calibrated and as the probe is believed to read, went past the limit for good [s]. */
function limitPassedS({ inputs, settings, verdicts, plateau }: EndedRun): number | null {
  const mainS = verdicts.stages.find(({ stage }) => stage === 'main-fraction')?.fromS;
  if (mainS === undefined) return null;
  const { offsetK, gain } = settings.probe;
  let sinceS: number | null = null;
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.channel !== 'head' || input.timeS < mainS) continue;
    const headC = offsetK + gain * input.value - plateau.probeReadsHighK;
    if (headC <= plateau.limitC) sinceS = null;
    else sinceS ??= input.timeS;
    if (sinceS !== null && input.timeS - sinceS >= staysS) return sinceS;
  }
  return null;
}

/** As booked, or as read where no strength is known to convert it by [mL]. */
export function volumeOf({ booked, amount }: DebriefCut): number | null {
  if (booked !== null) return booked.volumeMl.value;
  return amount?.by === 'volume' ? amount.volumeMl.value : null;
}
