import { type RecordedChange, type Snapshot, type StageSpan, say } from '#shared-core';

const warmUpFromStart: StageSpan = {
  stage: 'warm-up',
  fromS: 0,
  toS: null,
  because: say('The run began.'),
};

/** The stages that the record names, each closed where the next begins. */
export function stagesOfRecord(changes: readonly RecordedChange[]): readonly StageSpan[] {
  const named = changes.flatMap((change) => (change.kind === 'stage-entered' ? [change.span] : []));
  const first = named[0];
  // A run begins in warm-up: nobody enters it, so the record need not say so.
  const entered = !first || first.stage === 'warm-up' ? named : [warmUpFromStart, ...named];
  return entered.map((span, index) => ({ ...span, toS: entered[index + 1]?.fromS ?? null }));
}

/** The stages so far, once a snapshot says which one lasts now. */
export function withSnapshotStage(
  spans: readonly StageSpan[],
  snapshot: Snapshot,
): readonly StageSpan[] {
  const { stage, sinceS, because } = snapshot.stage;
  const last = spans[spans.length - 1];
  // A snapshot from before what the record already names says nothing new.
  if (last !== undefined && (last.stage === stage || sinceS < last.fromS)) return spans;
  const entered: StageSpan = { stage, fromS: sinceS, toS: null, because };
  if (!last) return [entered];
  return [...spans.slice(0, -1), { ...last, toS: sinceS }, entered];
}
