import type { RecordedChange, RunInput } from '#shared-core';
import {
  createPackedInputs,
  type RecordedConclusions,
  type RunSoFar,
} from '../run-library/index.ts';

/**
 * A run under way from its beginning, as windows are told it. A window that joins it is told all of it from here and never waits for
 * the disk, which may be away, asleep or damaged in just that moment.
 */
export interface RunMemory {
  add(input: RunInput): void;
  conclude(change: RecordedChange): void;
  count(): number;
  /** At most so many from that one on; fewer only at the end. */
  inputs(fromIndex: number, most: number): RunInput[];
  conclusions(): RecordedConclusions;
}

/** @param past what was recorded before this process, whose monitor is of that version */
export function createRunMemory(
  past: Pick<RunSoFar, 'inputs' | 'changes' | 'modelVersions'>,
  modelVersion: string,
): RunMemory {
  const packed = createPackedInputs();
  for (const input of past.inputs) packed.push(input);
  const changes = [...past.changes];
  const modelVersions = [...new Set([...past.modelVersions, modelVersion])];
  return {
    add: packed.push,
    conclude: (change) => void changes.push(change),
    count: packed.count,
    inputs: packed.page,
    conclusions: () => ({ changes, modelVersions }),
  };
}
