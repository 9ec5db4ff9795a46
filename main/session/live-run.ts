import {
  type EventBody,
  type LogBody,
  type LogHeader,
  type Mark,
  type MarkBody,
  type Monitor,
  type MonitorChange,
  packReading,
  type Reading,
  type RequestAnswer,
  type Result,
  type RunInput,
  type RunSettings,
  type RunSummary,
  type Snapshot,
  textsInSnapshot,
  wordingOf,
} from '#shared-core';
import type { Clock, Scheduler } from '../clock/index.ts';
import type { FileProblem } from '../file-layer/index.ts';
import type { GivenUp, ProbeLinkChange, ProbeReading } from '../probe/index.ts';
import type { PendingRecord, Recorder } from '../recorder/index.ts';
import {
  asRecorded,
  type LeftOut,
  pageInputs,
  type RecordedConclusions,
  type RunSoFar,
} from '../run-library/index.ts';
import { createAdvice } from './advice.ts';
import { createCatchUp } from './catch-up.ts';
import type { ClockEvent } from './clock-watch.ts';
import type { MonitorAnswer } from './guarded-monitor.ts';
import { createPace } from './pace.ts';
import { createRunClock } from './run-clock.ts';
import { createRunMemory } from './run-memory.ts';

/**
 * Least time between events of a kind to the windows [s]: as many as an eye can tell apart. A gap as long as a probe's own
 * interval would hold each reading back by whatever the one before came too late.
 */
const eventGapS = 0.04;
/** The probe counts as lost from so long after the last that was recorded: behind the whole second of which something was concluded [s]. */
const afterLastS = 0.25;

/** A run that was cut off with the program, and when it goes on. */
export interface Continuation {
  readonly past: RunSoFar;
  readonly record: Extract<LogBody, { readonly kind: 'continued' }>;
  /** False where the computer's clock was set meanwhile and nothing tells how long nobody listened. */
  readonly isClosedTimeKnown: boolean;
}

export interface LiveRunSetup {
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  readonly header: LogHeader;
  /** When this process began to record, by the monotonic clock. */
  readonly startedAtS: number;
  /** Absent for a new run. */
  readonly continuation?: Continuation;
  readonly recorder: Recorder;
  /** What the record lacks, of all that the recorder has written. */
  readonly leftOut: Pick<LeftOut, 'sentences'>;
  /** Everything that was heard before this moment has been told. */
  readonly heardUpToS: () => number;
  /** The probe brings the time with its readings (a simulated still): what a person does happens when the newest was made. */
  readonly probeTellsTime: boolean;
  readonly createMonitor: (settings: RunSettings) => Monitor;
  /** Told with how many strengths the monitor has told so far. */
  readonly onSnapshot: (snapshot: Snapshot, estimatesTold: number) => void;
  readonly onInputs: (body: EventBody<'inputs'>) => void;
  readonly onMonitorFailed: (message: string) => void;
}

/** The run that is being recorded. Everything is in the record before the monitor sees it. */
export interface LiveRun {
  readonly header: LogHeader;
  addReadings(readings: readonly ProbeReading[]): void;
  /** Readings that never came this far: the record says so, and the monitor does without them. */
  addGivenUp(givenUp: GivenUp): void;
  addLink(change: ProbeLinkChange): void;
  /** Answers once the mark is in the record; null once the run has ended. */
  addMark(mark: MarkBody): Promise<Mark | null>;
  addClockEvent(event: ClockEvent): void;
  /** Lets the monitor notice the passing of time. */
  advance(): void;
  summary(): RunSummary;
  /** So much of it, from an input on, as a window takes at once. */
  page(fromIndex: number): RequestAnswer<'runs/read'>;
  conclusions(): RecordedConclusions & Pick<MonitorAnswer, 'estimates'>;
  unsaved(): readonly PendingRecord[];
  /** Ends the run; `onEnd` is told when that was, before the disk is waited for. */
  stop(onEnd: (endS: number) => void): Promise<Result<void, FileProblem>>;
}

export function startLiveRun(setup: LiveRunSetup): LiveRun {
  const { clock, header, startedAtS, recorder, onInputs, onSnapshot, probeTellsTime } = setup;
  const past = setup.continuation?.past ?? nothingYet;
  const runClock = createRunClock(
    startedAtS,
    header.timeScale,
    setup.continuation?.record.timeS ?? 0,
  );
  const catchUp = createCatchUp(setup);
  /** The end that was asked for: what was heard before still belongs to the run. */
  let endsAtS = Number.POSITIVE_INFINITY;
  let marks = past.lastMarkId;
  let readings = past.readings;
  let endS = past.endS;
  let ended = false;
  /** It has ended, and the disk did not take all of it. */
  let isNotSaved = false;
  let heatOffCalledS = past.heatOffCalledS;
  let newestSnapshot: Snapshot | null = null;
  /** What stood when the run ended; null while it goes on. */
  let endSnapshot: Snapshot | null = null;
  let estimates: MonitorAnswer['estimates'] = [];
  const memory = createRunMemory(
    past,
    setup.continuation?.record.modelVersion ?? header.modelVersion,
  );
  let sentInputs = memory.count();
  let knownChanges = past.changes.length;

  const snapshotPace = createPace(eventGapS, setup, () => {
    if (newestSnapshot !== null) onSnapshot(newestSnapshot, estimates.length);
  });
  const inputsPace = createPace(eventGapS, setup, () => {
    const fromIndex = sentInputs;
    sentInputs = memory.count();
    const inputs = memory.inputs(fromIndex, sentInputs - fromIndex);
    onInputs({ runId: header.runId, fromIndex, inputs });
  });
  const advice = createAdvice({
    ...setup,
    createMonitor: () => setup.createMonitor(header.settings),
    past: past.inputs,
    onAnswer: takeAnswer,
    onFailure(message) {
      recorder.append({ kind: 'monitor-failed', timeS: endS, message }, endS, 'now');
      setup.onMonitorFailed(message);
    },
  });

  function give(inputs: readonly RunInput[]): void {
    for (const input of inputs) {
      memory.add(input);
      advice.push(input);
    }
    // Only now: asked for at the first of several, the snapshot would leave without the newest.
    inputsPace.request();
    snapshotPace.request();
  }

  /** What the monitor concludes again of what was recorded before; another version of it need not conclude the same. */
  function isRecorded({ timeS }: MonitorChange): boolean {
    const { modelVersion } = setup.continuation?.record ?? past;
    if (modelVersion !== past.modelVersion) return timeS <= past.endS;
    knownChanges -= 1;
    return knownChanges >= 0;
  }

  function takeAnswer(answer: MonitorAnswer): void {
    for (const change of answer.changes) {
      if (isRecorded(change)) continue;
      if (change.kind === 'alarm-changed' && change.record.alarm === 'plateau-departure') {
        heatOffCalledS ??= change.record.raisedS;
      }
      const urgency = change.kind === 'event' ? 'soon' : 'now';
      recorder.append({ kind: 'change', change }, change.timeS, urgency);
      memory.conclude(asRecorded(change));
    }
    estimates = answer.estimates;
    // What was thought of moments long past is no news.
    if (!advice.isBehind()) newestSnapshot = answer.snapshot;
  }

  function record(input: Mark | Extract<RunInput, { kind: 'link' }>): void {
    endS = Math.max(endS, input.timeS);
    recorder.append(input, input.timeS, 'now');
    give([input]);
  }

  function recordReadings(some: readonly Reading[]): void {
    const last = some.at(-1);
    if (last === undefined) return;
    endS = Math.max(endS, last.timeS);
    readings += some.length;
    recorder.append({ kind: 'readings', readings: some.map(packReading) }, endS, 'soon');
    give(some);
  }

  /** Record and monitor get it behind everything that was heard before it. */
  function inTurn(atS: number, act: () => void): void {
    if (probeTellsTime) act();
    else catchUp.after(atS, act);
  }

  const stampOfAct = (atS: number) => (probeTellsTime ? null : runClock.stamp(atS)) ?? endS;

  function addLinkAt(
    atS: number,
    change: Pick<Extract<RunInput, { kind: 'link' }>, 'state' | 'reason'>,
  ): void {
    if (ended || atS > endsAtS) return;
    // A reader that stopped took along what it had heard since, be it before the run: the run begins without it.
    const fromS = change.reason === 'reader-stopped' ? Math.max(atS, startedAtS) : atS;
    const timeS = runClock.stamp(fromS);
    if (timeS !== null) record({ kind: 'link', timeS, state: change.state, reason: change.reason });
  }

  function summary(): RunSummary {
    const missing = setup.leftOut.sentences(past.report);
    return {
      runId: header.runId,
      name: header.settings.name,
      notes: '',
      startedAtIso: header.startedAtIso,
      durationS: endS,
      readings,
      ...(isNotSaved ? ({ ended: 'clean', unsure: true } as const) : { ended: 'recording' }),
      rehearsal: header.rehearsal,
      plateau: null,
      heatOffCalledS,
      leftOut: [...missing],
      ...(missing.length > 0 && { wording: wordingOf(missing) }),
      damagedRecords: past.report.missingRecords,
      unreadable: null,
    };
  }

  if (setup.continuation !== undefined) {
    const { record: continued, isClosedTimeKnown } = setup.continuation;
    recorder.append(continued, continued.timeS, 'now');
    const lostS = Math.min(past.endS + afterLastS, continued.timeS);
    record({ kind: 'link', timeS: lostS, state: 'lost', reason: 'program-closed' });
    const reason = isClosedTimeKnown ? 'program-closed' : 'clock-stepped';
    record({ kind: 'link', timeS: continued.timeS, state: 'back', reason });
  }

  return {
    header,
    addReadings(probeReadings) {
      if (ended) return;
      const stamped = probeReadings
        .filter(({ atS }) => atS <= endsAtS)
        .flatMap((reading) => toReading(reading, runClock.stamp))
        // Several probes are told one after the other.
        .sort((a, b) => a.timeS - b.timeS);
      let next = 0;
      for (const atS of catchUp.waitingFor()) {
        // What a person did meanwhile stands between what was measured before it and what after it.
        const timeS = runClock.stamp(atS) ?? 0;
        const later = stamped.findIndex((reading) => reading.timeS > timeS);
        if (later < 0) break;
        recordReadings(stamped.slice(next, later));
        next = Math.max(next, later);
        catchUp.actUpTo(atS);
      }
      recordReadings(stamped.slice(next));
    },
    addGivenUp(givenUp) {
      if (ended || givenUp.toS < startedAtS || givenUp.fromS > endsAtS) return;
      // Where some were heard before the run, how many of them is not known: all count.
      const body: LogBody = {
        kind: 'dropped',
        timeS: endS,
        readings: givenUp.readings,
        fromS: runClock.told(givenUp.fromS),
        toS: runClock.told(givenUp.toS),
        where: 'probe-process',
      };
      recorder.append(body, endS, 'soon');
    },
    addLink: (change) => addLinkAt(change.atS, change),
    addMark(body) {
      const atS = clock.monotonicS();
      if (endsAtS < Number.POSITIVE_INFINITY) return Promise.resolve(null);
      return new Promise((resolve) => {
        inTurn(atS, () => {
          marks += 1;
          const timeS = stampOfAct(atS);
          const mark: Mark = { kind: 'mark', timeS, markId: marks, mark: body };
          record(mark);
          resolve(mark);
        });
      });
    },
    addClockEvent({ sinceS, sleptS, wallStepS }) {
      if (ended) return;
      const body = { kind: 'clock', timeS: endS, sleptS, wallStepS } as const;
      recorder.append(body, endS, 'now');
      if (sleptS === 0) return;
      addLinkAt(sinceS, { state: 'lost', reason: 'computer-asleep' });
      runClock.skip(sinceS, sleptS);
      addLinkAt(clock.monotonicS(), { state: 'back', reason: 'computer-asleep' });
    },
    advance() {
      if (ended) return;
      const timeS = runClock.advance(Math.min(clock.monotonicS(), setup.heardUpToS()));
      if (timeS === null) return;
      advice.advanceTo(timeS);
      snapshotPace.request();
    },
    summary,
    page(fromIndex) {
      const inputs = memory.inputs(fromIndex, pageInputs);
      const next = fromIndex + inputs.length;
      return {
        summary: summary(),
        settings: header.settings,
        inputs,
        nextIndex: next < memory.count() ? next : null,
        endS,
        ...(endSnapshot !== null && {
          endSnapshot,
          wording: wordingOf(textsInSnapshot(endSnapshot)),
        }),
      };
    },
    conclusions: () => ({ ...memory.conclusions(), estimates }),
    unsaved: recorder.unsaved,
    async stop(onEnd) {
      // The probe goes on talking while the last sync is awaited; the run is over all the same.
      endsAtS = clock.monotonicS();
      await new Promise<void>((resolve) => inTurn(endsAtS, resolve));
      ended = true;
      endS = Math.max(endS, stampOfAct(endsAtS));
      advice.advanceTo(endS);
      await advice.caughtUp();
      inputsPace.flush();
      snapshotPace.request();
      snapshotPace.flush();
      // What a snapshot makes only when it is read is left out by whoever sends it as it is.
      endSnapshot = JSON.parse(JSON.stringify(newestSnapshot));
      onEnd(endS);
      const closed = await recorder.close({ timeS: endS });
      isNotSaved = !closed.ok;
      return closed;
    },
  };
}

/** Of a run that begins now. */
const nothingYet: Omit<
  RunSoFar,
  'header' | 'written' | 'writtenAtS' | 'logEnd' | 'memory' | 'leftOut'
> = {
  report: { missingRecords: 0, unknownRecords: 0 },
  inputs: [],
  changes: [],
  modelVersions: [],
  modelVersion: '',
  readings: 0,
  lastMarkId: 0,
  heatOffCalledS: null,
  endS: 0,
};

/** A reading in run time; none for what came before the run or is no number. */
function toReading(
  { atS, channel, value, unit, quality }: ProbeReading,
  stamp: (atS: number) => number | null,
): readonly Reading[] {
  if (!Number.isFinite(value)) return [];
  const timeS = stamp(atS);
  // Adding zero turns −0 into 0, which the log could not tell apart.
  return timeS === null
    ? []
    : [{ kind: 'reading', timeS, channel, value: value + 0, unit, quality }];
}
