import type { EventBody, RequestAnswer, RunSettings } from '#shared-core';

const plainName = 'The run';
const plainNote = '(a note)';

type Inputs = EventBody<'inputs'>['inputs'];
type AnyInput = RequestAnswer<'runs/read'>['inputs'][number];

/** Whatever somebody may have written freely could name a person: a note says only that it is there. */
function inputWithoutNames<I extends AnyInput>(input: I): I {
  return input.kind === 'mark' && input.mark.type === 'note'
    ? { ...input, mark: { ...input.mark, text: plainNote } }
    : input;
}

export function inputsWithoutNames(inputs: Inputs): Inputs {
  return inputs.map(inputWithoutNames);
}

function settingsWithoutNames(settings: RunSettings): RunSettings {
  const { ferment: _, ...rest } = settings;
  return { ...rest, name: plainName, rig: { ...settings.rig, description: '' } };
}

export function pageWithoutNames(page: RequestAnswer<'runs/read'>): RequestAnswer<'runs/read'> {
  const { corrections: _, ...summary } = page.summary;
  const { lateMarks: __, ...rest } = page;
  return {
    ...rest,
    summary: { ...summary, name: plainName, notes: '' },
    settings: settingsWithoutNames(page.settings),
    inputs: page.inputs.map(inputWithoutNames),
  };
}

/** Enough to see that the probe is heard; nothing of this computer. */
export function probeWithoutNames(probe: EventBody<'probe'>): EventBody<'probe'> {
  const { state, channels, latest, readingsPerS, rejectedLines, droppedBytes } = probe;
  return {
    state,
    channels,
    latest,
    readingsPerS,
    rejectedLines,
    droppedBytes,
    source: null,
    path: null,
    lastLine: null,
    problem: null,
    advice: null,
  };
}
