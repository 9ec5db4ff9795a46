import type { ProbeStatus, SafetyConfirm } from '#shared-core';
import type { FieldProblem } from '../draft/index.ts';
import { fieldNames, type TextField } from '../draft/index.ts';
import { hasHead, isSimulated } from '../probe/index.ts';
import { looksLeft, safetyLooks } from './safety-checks.ts';

/** Something that keeps a run from starting, and the entry where it is done. */
export interface ToDo {
  readonly words: string;
  readonly field: TextField | 'probe' | 'checks';
}

export function stillToDo(
  problems: readonly FieldProblem[],
  probe: ProbeStatus | null,
  confirms: readonly SafetyConfirm[],
): readonly ToDo[] {
  const left = looksLeft(confirms).length;
  return [
    ...probeStillToDo(probe),
    ...problems.flatMap(entryStillToDo),
    ...(left === 0 ? [] : [{ words: looksWords(left), field: 'checks' } satisfies ToDo]),
  ];
}

function looksWords(left: number): string {
  return left === safetyLooks.length
    ? `Confirm the ${left} looks before heat`
    : `Confirm ${left} more before heat`;
}

function probeStillToDo(probe: ProbeStatus | null): readonly ToDo[] {
  const field = 'probe';
  // The simulated still is no probe: a run of it is a rehearsal, and is started as one.
  if (probe?.state !== 'hearing' || isSimulated(probe)) {
    return [{ words: 'Connect a probe that is heard', field }];
  }
  return hasHead(probe) ? [] : [{ words: 'Say which number is the still head', field }];
}

/** What nobody can guess is asked for; what is there and can't be used is named. */
const questions: Partial<Record<TextField, string>> = {
  altitudeM: 'Say how high this room lies, under “Air pressure”',
  stationPressure: 'Say what the barometer shows today',
  seaLevelPressure: 'Say what today’s weather report says',
};

function entryStillToDo({ field, message }: FieldProblem): readonly ToDo[] {
  if (!(field in fieldNames)) return [];
  const known = field as TextField;
  const question = message.startsWith('Needed') ? questions[known] : undefined;
  return [{ words: question ?? `Mend “${fieldNames[known]}”`, field: known }];
}
