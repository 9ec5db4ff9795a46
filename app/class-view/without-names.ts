import type { EventBody, MarkBody, RequestAnswer, RunSettings } from '#shared-core';

const plainName = 'The run';
const plainNote = '(a note)';

type Inputs = EventBody<'inputs'>['inputs'];
type AnyInput = RequestAnswer<'runs/read'>['inputs'][number];

/**
 * What a class may see of a mark: numbers and words of this program, and nothing that somebody wrote or that says who did it.
 * Every kind of mark has to be decided on here.
 */
const isForTheClass: Readonly<Record<MarkBody['type'], boolean>> = {
  'heat-on': true,
  'heat-eased': true,
  'heat-off': true,
  'receiver-changed': true,
  'volume-read': true,
  'mass-read': true,
  'drops-counted': true,
  'strength-read': true,
  'pressure-read': true,
  'alarm-acknowledged': true,
  'alarm-shelved': true,
  'attention-answered': true,
  'mark-withdrawn': true,
  'liquid-volume': true,
  'liquid-mass': true,
  'liquid-strength': true,
  'liquid-density': true,
  'liquid-pycnometer': true,
  'sample-weighed': true,
  'liquid-refractometer': true,
  'liquid-chromatogram': true,
  'liquid-label': true,
  'sugar-known': true,
  'proof-burned': false,
  note: false,
};

/** What is not for the class stands as a note without words: that something was marked is no secret. */
function inputWithoutNames<I extends AnyInput>(input: I): I {
  return input.kind === 'mark' && !isForTheClass[input.mark.type]
    ? { ...input, mark: { type: 'note', text: plainNote } }
    : input;
}

export function inputsWithoutNames(inputs: Inputs): Inputs {
  return inputs.map(inputWithoutNames);
}

/** What the monitor goes by; each field is named, so that one that is added stays here until somebody lets it out. */
function settingsWithoutNames(settings: RunSettings): RunSettings {
  const { charge, rig, pressure, probe, leastStrengthAbv, stop, firstFraction } = settings;
  return {
    name: plainName,
    charge,
    rig: { ...rig, description: '' },
    pressure,
    probe,
    leastStrengthAbv,
    stop,
    firstFraction,
    reactionTimeS: settings.reactionTimeS,
    attentionCheckS: settings.attentionCheckS,
    safetyConfirms: [],
  };
}

function summaryWithoutNames(
  summary: RequestAnswer<'runs/read'>['summary'],
): RequestAnswer<'runs/read'>['summary'] {
  const { runId, startedAtIso, durationS, readings, ended, rehearsal } = summary;
  return {
    runId,
    name: plainName,
    notes: '',
    startedAtIso,
    durationS,
    readings,
    ended,
    rehearsal,
    plateau: summary.plateau,
    heatOffCalledS: summary.heatOffCalledS,
    damagedRecords: summary.damagedRecords,
    unreadable: null,
  };
}

export function pageWithoutNames(page: RequestAnswer<'runs/read'>): RequestAnswer<'runs/read'> {
  return {
    summary: summaryWithoutNames(page.summary),
    settings: settingsWithoutNames(page.settings),
    inputs: inputsWithoutNames(page.inputs),
    nextIndex: page.nextIndex,
    endS: page.endS,
    ...(page.endSnapshot && { endSnapshot: page.endSnapshot }),
    ...(page.wording && { wording: page.wording }),
  };
}

/** How the run under way stands; nothing of this computer, nor of the runs before it. */
export function recordingWithoutNames(recording: EventBody<'recording'>): EventBody<'recording'> {
  const { state, runId, startedAtIso, savedToS, endedS, adviceStopped, lostReadings } = recording;
  return {
    state,
    runId,
    startedAtIso,
    savedToS,
    problem: null,
    ...(endedS !== undefined && { endedS }),
    ...(adviceStopped !== undefined && { adviceStopped }),
    ...(lostReadings !== undefined && { lostReadings }),
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
