import {
  assertNever,
  type MonitorChange,
  modelVersion,
  type RecordedChange,
  type RequestAnswer,
  recordedChangeSchema,
  say,
} from '#shared-core';
import { clockWords } from '../words/index.ts';

/** Whether going through the inputs again concludes what was concluded at the time. */
export type Agreement =
  | { readonly kind: 'same'; readonly stages: number; readonly prompts: number }
  /** `otherModel`: another version of the monitor advised in the run, so it need not have called as this one does. */
  | { readonly kind: 'different'; readonly fromS: number; readonly otherModel: boolean }
  /** Taken in from a table, or cut off before anything was concluded. */
  | { readonly kind: 'nothing-recorded' };

/** Compares in the order of the record, field by field. The snapshots behind alarms are left out. */
export function agreementWith(
  { changes: recorded, modelVersions }: RequestAnswer<'runs/changes'>,
  recomputed: readonly MonitorChange[],
): Agreement {
  if (recorded.length === 0) return { kind: 'nothing-recorded' };
  const again = recomputed.map(withoutSnapshot);
  const length = Math.max(recorded.length, again.length);
  for (let index = 0; index < length; index++) {
    const one = recorded[index];
    const other = again[index];
    if (JSON.stringify(one) !== JSON.stringify(other)) {
      return {
        kind: 'different',
        otherModel: modelVersions.some((version) => version !== modelVersion),
        fromS: Math.min(one?.timeS ?? Infinity, other?.timeS ?? Infinity),
      };
    }
  }
  return {
    kind: 'same',
    stages: recorded.filter(({ kind }) => kind === 'stage-entered').length,
    prompts: new Set(
      recorded.flatMap((change) =>
        change.kind === 'alarm-changed' ? [`${change.record.alarm} ${change.record.raisedS}`] : [],
      ),
    ).size,
  };
}

function withoutSnapshot(change: MonitorChange): RecordedChange {
  // Through the same schema as the record, so that the order of fields cannot make a difference.
  if (change.kind !== 'alarm-changed') return recordedChangeSchema.parse(change);
  const { kind, timeS, record, state } = change;
  return recordedChangeSchema.parse({ kind, timeS, record, state });
}

export function agreementWords(agreement: Agreement): string {
  switch (agreement.kind) {
    case 'same':
      return say(
        'recomputed: {stages, plural, one {# change} other {# changes}} of stage and {prompts, plural, one {# prompt} other {# prompts}} as recorded',
        { stages: agreement.stages, prompts: agreement.prompts },
      );
    case 'different':
      return agreement.otherModel
        ? say(
            'recomputed by another version of the monitor: differs from the record from {from} on',
            { from: clockWords(agreement.fromS) },
          )
        : say('recomputed: differs from the record from {from} on', {
            from: clockWords(agreement.fromS),
          });
    case 'nothing-recorded':
      return say('computed from the readings alone');
    default:
      return assertNever(agreement);
  }
}
