import type { RecordedChange, Snapshot, StageSpan } from '#shared-core';

/** The stages that the record names, each closed where the next begins. */
export function stagesOfRecord(changes: readonly RecordedChange[]): readonly StageSpan[] {
  const entered = changes.flatMap((change) =>
    change.kind === 'stage-entered' ? [change.span] : [],
  );
  return entered.map((span, index) => ({ ...span, toS: entered[index + 1]?.fromS ?? null }));
}

/** The stages so far, once a snapshot says which one lasts now. Stages only go forward. */
export function withSnapshotStage(
  spans: readonly StageSpan[],
  snapshot: Snapshot,
): readonly StageSpan[] {
  const { stage, sinceS, because } = snapshot.stage;
  const last = spans[spans.length - 1];
  if (last?.stage === stage) return spans;
  const entered: StageSpan = { stage, fromS: sinceS, toS: null, because };
  if (!last) return [entered];
  return [...spans.slice(0, -1), { ...last, toS: sinceS }, entered];
}
