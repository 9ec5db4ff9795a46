import { type ProbeStatus, say } from '#shared-core';
import type { FieldProblem } from '../draft/index.ts';
import { fieldNames, type TextField } from '../draft/index.ts';
import { hasHead, isSimulated } from '../probe/index.ts';
import type { PrepareDraft } from '../stores/index.ts';
import { looksLeft, safetyLooks } from './safety-checks.ts';

/** Something that keeps a run from starting, and the entry where it is done. */
export interface ToDo {
  readonly words: string;
  readonly field: TextField | 'probe' | 'checks';
}

export function stillToDo(
  problems: readonly FieldProblem[],
  probe: ProbeStatus | null,
  draft: PrepareDraft,
): readonly ToDo[] {
  const left = looksLeft(draft.confirms).length;
  return [
    ...probeStillToDo(probe),
    ...problems.flatMap((problem) => entryStillToDo(problem, draft)),
    ...(isOfOtherProbe(draft, probe)
      ? [
          {
            words: say('Take the steam’s reading again, with this probe'),
            field: 'steamReading',
          } satisfies ToDo,
        ]
      : []),
    ...(isCalibratedWithOther(draft, probe)
      ? [
          {
            words: say('Say whether the calibration belongs to this probe'),
            field: 'probe',
          } satisfies ToDo,
        ]
      : []),
    ...(left === 0 ? [] : [{ words: looksWords(left), field: 'checks' } satisfies ToDo]),
  ];
}

/** Steam tells where the limit lies on the probe that was held in it, and on no other. */
export function isOfOtherProbe(
  { pressureFrom, steamTaken }: PrepareDraft,
  probe: ProbeStatus | null,
): boolean {
  return pressureFrom === 'steam' && steamTaken !== null && isOther(steamTaken.device, probe);
}

/** Each probe is off in its own way: what ice and steam said of one says nothing of another. */
export function isCalibratedWithOther(
  { correction, correctionOf }: PrepareDraft,
  probe: ProbeStatus | null,
): boolean {
  return correction !== null && isOther(correctionOf, probe);
}

/** Where nobody knows which device it was, or the simulated still is rehearsed on, there is nothing to say. */
function isOther(device: string | null, probe: ProbeStatus | null): boolean {
  if (device === null || probe?.state !== 'hearing' || isSimulated(probe)) return false;
  return probe.device !== device;
}

function looksWords(left: number): string {
  return left === safetyLooks.length
    ? say('Confirm the {left} looks before heat', { left })
    : say('Confirm {left} more before heat', { left });
}

function probeStillToDo(probe: ProbeStatus | null): readonly ToDo[] {
  const field = 'probe';
  // The simulated still is no probe: a run of it is a rehearsal, and is started as one.
  if (probe?.state !== 'hearing' || isSimulated(probe)) {
    return [{ words: say('Connect a probe that is heard'), field }];
  }
  return hasHead(probe) ? [] : [{ words: say('Say which number is the still head'), field }];
}

/** What nobody can guess is asked for; what is there and can't be used is named. */
const questions: Partial<Record<TextField, string>> = {
  altitudeM: say('Say how high this room lies, under “Air pressure”'),
  stationPressure: say('Say what the barometer shows today'),
  seaLevelPressure: say('Say what today’s weather report says'),
  steamReading: say('Hold the probe in steam and take what it shows, under “Air pressure”'),
};

function entryStillToDo({ field }: FieldProblem, draft: PrepareDraft): readonly ToDo[] {
  if (!(field in fieldNames)) return [];
  const known = field as TextField;
  const question = draft[known].trim() === '' ? questions[known] : undefined;
  return [
    {
      words: question ?? say('Mend “{field}”', { field: fieldNames[known] }),
      field: known,
    },
  ];
}
