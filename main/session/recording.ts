import {
  type EventBody,
  fail,
  type LogHeader,
  type Mark,
  type MarkBody,
  type ProbeSource,
  type Result,
  type RunSettings,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import type { Scheduler } from '../clock/index.ts';
import { serviceProblemOf } from '../file-layer/index.ts';
import type { GivenUp, ProbeHub, ProbeLinkChange, ProbeReading } from '../probe/index.ts';
import { continueRecorder, type Recorder, startRecorder } from '../recorder/index.ts';
import {
  createLeftOut,
  type LeftOut,
  type LiveView,
  type NewRunSetup,
} from '../run-library/index.ts';
import { type ClockReading, clockEvent, readClocks } from './clock-watch.ts';
import type { EventHub } from './event-hub.ts';
import { type Continuation, type LiveRun, startLiveRun } from './live-run.ts';
import { newRunHeader } from './new-run-header.ts';
import { createNotSavedRuns } from './not-saved-runs.ts';
import { createSnapshotWording } from './snapshot-wording.ts';
import { createUnfinished, type UnfinishedRun } from './unfinished.ts';

/** Below this much room the person is warned, long before anything is lost: a week at 1 Hz [bytes]. */
export const lowSpaceBytes = 200_000_000;
const spaceCheckS = 10;
const tickS = 0.25;
/** What is heard between waking and the next look at the clocks is stamped as if the computer had not slept. */
const clockCheckS = 0.25;

export interface RecordingSetup extends NewRunSetup {
  readonly probeHub: ProbeHub;
  /** Lets go of a rehearsal's still, which must never be there to be taken for a probe: when its run ends, or can't begin. */
  readonly letGoOfStill: () => Promise<void>;
  readonly scheduler: Scheduler;
  readonly uptimeS: () => number;
  readonly events: EventHub;
  /** The folder of the runs was there, and is not any more. */
  readonly isFolderGone: () => boolean;
}

/** At most one run is being recorded; this is where it starts, lives and ends. */
export interface Recording {
  status(): EventBody<'recording'>;
  /** The folder of the runs has gone, or has come back. */
  tellFolder(): void;
  current(): { readonly runId: string; readonly header: LogHeader } | null;
  /** What the library can't read from the files of a run that is in memory. */
  liveView(runId: string): LiveView | undefined;
  /** Runs that have ended and that the disk has not taken yet, newest first. */
  notSaved(): readonly { readonly runId: string; readonly view: LiveView }[];
  /** A run that is in memory, under way or not saved yet, as windows are told it; null for any other. */
  told(runId: string): Pick<LiveRun, 'page' | 'conclusions'> | null;
  /** The running run with that view, for whoever reads its files elsewhere. */
  underWay(): { readonly runId: string; readonly view: LiveView } | null;
  start(settings: RunSettings): Promise<Result<{ runId: string }, ServiceProblem>>;
  /** The run that a program before this one was recording, if it makes sense to go on with it. */
  unfinished(): Promise<UnfinishedRun | null>;
  goOn(runId: string): Promise<Result<{ runId: string }, ServiceProblem>>;
  stop(): Promise<Result<{ runId: string }, ServiceProblem>>;
  mark(body: MarkBody): Promise<Result<Mark, ServiceProblem>>;
  addReadings(readings: readonly ProbeReading[]): void;
  addGivenUp(givenUp: GivenUp): void;
  addLink(change: ProbeLinkChange): void;
  checkClocks(): void;
  close(): Promise<void>;
}

interface Running {
  readonly runId: string;
  readonly header: LogHeader;
  readonly run: LiveRun;
  readonly stopTimers: () => void;
  /** When it ended [s]; null while it goes on. */
  readonly endedS: number | null;
}

/** A stop that is under way or done: whoever else asks for it gets the same answer. */
interface Stopping {
  readonly runId: string;
  readonly answer: Promise<Result<{ runId: string }, ServiceProblem>>;
}

export function createRecording(setup: RecordingSetup): Recording {
  const { probeHub, clock, scheduler, files, library, runsFolder, app, events } = setup;
  let running: Running | null = null;
  let stopping: Stopping | null = null;
  let summarising: Promise<unknown> | null = null;
  let starting = false;
  /** What is told while a run is about to go on, whose probe is connected before its record is open; null at all other times. */
  let early: ((run: LiveRun) => void)[] | null = null;
  let recorder: Recorder | null = null;
  let adviceStopped: string | null = null;
  let spaceIsLow = false;
  let isAskingForSpace = false;
  const readNow = () => readClocks(clock, setup.uptimeS);
  let clocks = readNow();

  function status(): EventBody<'recording'> {
    const gone: ServiceProblem | null = setup.isFolderGone()
      ? { kind: 'folder-gone', path: runsFolder }
      : null;
    const ended = notSaved.told(gone);
    if (running === null || recorder === null) {
      const none = { runId: null, startedAtIso: null, savedToS: null };
      return { state: 'idle', ...none, problem: gone, ...ended };
    }
    const { runId, header, endedS } = running;
    const { state, savedToS, problem, lostReadings } = recorder.status();
    const warning: ServiceProblem | null = spaceIsLow
      ? { kind: 'disk-full', path: runsFolder }
      : null;
    return {
      state: gone === null ? state : 'failed',
      runId,
      startedAtIso: header.startedAtIso,
      savedToS,
      ...(endedS !== null && { endedS }),
      problem: gone ?? (problem === null ? warning : serviceProblemOf(problem)),
      ...(adviceStopped !== null && { adviceStopped }),
      ...(lostReadings > 0 && { lostReadings }),
      ...ended,
    };
  }

  const tellStatus = () => events.emit('recording', status());
  const unfinished = createUnfinished({ ...setup, readClocks: readNow });
  const notSaved = createNotSavedRuns({ scheduler, onChange: tellStatus, onSaved: summarise });
  /** Runs that this program has ended: what is on the disk of one that is not saved looks as if it had been cut off. */
  const endedHere = new Set<string>();

  /** Whoever lists the runs then has it at hand; a disk that holds what is looked at keeps nobody waiting who stops a run. */
  function summarise(runId: string): void {
    summarising = library.summary(runId);
  }

  /** One beginning at a time. */
  async function begin(
    act: () => Promise<Result<{ runId: string }, ServiceProblem>>,
  ): Promise<Result<{ runId: string }, ServiceProblem>> {
    if (running !== null) return fail({ kind: 'already-recording', runId: running.runId });
    if (starting) return fail({ kind: 'already-recording', runId: '' });
    starting = true;
    try {
      return await act();
    } finally {
      starting = false;
    }
  }

  async function startRun(
    settings: RunSettings,
  ): Promise<Result<{ runId: string }, ServiceProblem>> {
    const { source } = probeHub.status();
    if (source === null) return fail({ kind: 'no-probe' });
    if (!setup.mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
    const wallMs = clock.wallMs();
    const made = await library.makeRunFolder(
      wallMs,
      notSaved.all().map((ended) => ended.runId),
    );
    if (!made.ok) return fail(serviceProblemOf(made.error));
    const { runId, folder } = made.value;
    const header = newRunHeader({ runId, wallMs, settings, source, app });
    const leftOut = createLeftOut();
    const onRecord = leftOut.add;
    const started = await startRecorder({
      ...setup,
      folder,
      header,
      onStatus,
      onRecord,
      ...remaking(folder, header),
    });
    if (!started.ok) {
      await files.remove(folder);
      return fail(serviceProblemOf(started.error));
    }
    // A missing second copy is no reason not to record.
    await library.keepHeader(folder, header);
    run({ header, source, recorder: started.value, leftOut, clocks: readNow() });
    return succeed({ runId });
  }

  async function continueRun(runId: string): Promise<Result<{ runId: string }, ServiceProblem>> {
    if (!setup.mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
    const told: typeof early = [];
    early = told;
    try {
      const ready = await unfinished.ready(runId);
      if (!ready.ok) return ready;
      const { past, folder, source, clocks } = ready.value;
      const { header, leftOut, memory } = past;
      const onRecord = leftOut.add;
      const continued = await continueRecorder(
        { ...setup, folder, header, onStatus, onRecord, ...remaking(folder, header) },
        past.logEnd,
        memory,
      );
      if (!continued.ok) return fail(serviceProblemOf(continued.error));
      const continuation = unfinished.continuation(ready.value);
      const recorder = continued.value;
      const live = run({ header, source, recorder, leftOut, clocks, continuation });
      for (const act of told) act(live);
      return succeed({ runId });
    } finally {
      early = null;
    }
  }

  /** The folder of a run that was deleted, or stayed behind on another stick, comes again where there is a folder of runs for it. */
  const remaking = (folder: string, header: LogHeader) => ({
    async remakeFolder() {
      const made = await files.claimFolder(folder);
      if (made.ok) await library.keepHeader(folder, header);
      return made;
    },
  });

  function tell(act: (run: LiveRun) => void): void {
    if (running !== null) act(running.run);
    else early?.push(act);
  }

  function onStatus(): void {
    if (running !== null || notSaved.all().length > 0) tellStatus();
  }

  interface Beginning {
    readonly header: LogHeader;
    readonly source: ProbeSource;
    readonly recorder: Recorder;
    readonly leftOut: LeftOut;
    /** What is heard from here on belongs to the run. */
    readonly clocks: ClockReading;
    readonly continuation?: Continuation;
  }

  function run({ header, source, ...beginning }: Beginning): LiveRun {
    const { runId } = header;
    adviceStopped = null;
    recorder = beginning.recorder;
    clocks = beginning.clocks;
    // The simulated still brings the time with its readings: a busy computer holds it up, and that is no silence.
    const probeTellsTime = source.kind === 'demo';
    const wordingIn = createSnapshotWording();
    const live = startLiveRun({
      ...setup,
      ...beginning,
      header,
      probeTellsTime,
      startedAtS: clocks.monoS,
      heardUpToS: probeHub.heardUpToS,
      onSnapshot(snapshot, estimatesTold) {
        const wording = wordingIn(snapshot);
        events.emit('snapshot', { runId, snapshot, wording, estimatesTold });
      },
      onInputs: (body) => events.emit('inputs', body),
      onMonitorFailed(message) {
        adviceStopped = message;
        tellStatus();
      },
    });
    const everyS = Math.max(0.05, tickS / source.timeScale);
    const timers = [
      ...(probeTellsTime ? [] : [scheduler.every(everyS, () => live.advance())]),
      scheduler.every(clockCheckS, checkClocks),
      scheduler.every(spaceCheckS, () => void checkSpace()),
    ];
    running = {
      runId,
      header,
      run: live,
      stopTimers: () => {
        for (const stopTimer of timers) stopTimer();
      },
      endedS: null,
    };
    tellStatus();
    void checkSpace();
    return live;
  }

  async function stop(): Promise<Result<{ runId: string }, ServiceProblem>> {
    if (running === null) return fail({ kind: 'not-recording' });
    const { runId } = running;
    if (stopping?.runId !== runId) stopping = { runId, answer: stopRun(running) };
    return stopping.answer;
  }

  async function stopRun(ending: Running): Promise<Result<{ runId: string }, ServiceProblem>> {
    const { runId, header, run, stopTimers } = ending;
    stopTimers();
    let endedS = 0;
    const stopped = await run.stop((atS) => {
      endedS = atS;
      running = { ...ending, endedS };
      tellStatus();
    });
    endedHere.add(runId);
    if (!stopped.ok && recorder !== null) {
      notSaved.add({ runId, header, run, recorder, endedS, problem: stopped.error });
    }
    running = null;
    if (ending.header.source?.kind === 'demo') await setup.letGoOfStill();
    tellStatus();
    if (!stopped.ok) return fail(serviceProblemOf(stopped.error));
    summarise(runId);
    return succeed({ runId });
  }

  function checkClocks(): void {
    const now = readNow();
    const event = clockEvent(clocks, now);
    clocks = now;
    if (event !== null) running?.run.addClockEvent(event);
  }

  async function checkSpace(): Promise<void> {
    // A disk that holds its answers is not asked the same again and again: what waits for it takes the place of what is to be written.
    if (isAskingForSpace) return;
    isAskingForSpace = true;
    const free = await files.freeBytes(runsFolder);
    isAskingForSpace = false;
    const isLow = free.ok && free.value < lowSpaceBytes;
    if (isLow === spaceIsLow) return;
    spaceIsLow = isLow;
    tellStatus();
  }

  const inMemory = (runId: string) => (running?.runId === runId ? running : notSaved.find(runId));

  function viewOf({ header, run }: Pick<Running, 'header' | 'run'>): LiveView {
    return {
      known: { summary: run.summary(), header, hasTornEnd: false },
      unsaved: run.unsaved(),
    };
  }

  return {
    status,
    tellFolder: tellStatus,
    current: () => running,
    liveView(runId) {
      const found = inMemory(runId);
      return found && viewOf(found);
    },
    notSaved: () => notSaved.all().map((ended) => ({ runId: ended.runId, view: viewOf(ended) })),
    told: (runId) => inMemory(runId)?.run ?? null,
    underWay: () => running && { runId: running.runId, view: viewOf(running) },
    start: (settings) =>
      begin(async () => {
        const started = await startRun(settings);
        if (!started.ok && probeHub.status().source?.kind === 'demo') await setup.letGoOfStill();
        return started;
      }),
    async unfinished() {
      const found = running === null && !starting ? await unfinished.find() : null;
      return found === null || endedHere.has(found.runId) ? null : found;
    },
    goOn: (runId) =>
      begin(async () =>
        endedHere.has(runId) ? fail({ kind: 'run-over', runId }) : continueRun(runId),
      ),
    stop,
    async mark(body) {
      if (running === null) return fail({ kind: 'not-recording' });
      const mark = await running.run.addMark(body);
      if (mark === null) return fail({ kind: 'not-recording' });
      probeHub.followMark(mark);
      return succeed(mark);
    },
    addReadings: (readings) => tell((run) => run.addReadings(readings)),
    addGivenUp: (givenUp) => tell((run) => run.addGivenUp(givenUp)),
    addLink: (change) => tell((run) => run.addLink(change)),
    checkClocks,
    async close() {
      if (running !== null) await stop();
      await stopping?.answer;
      await notSaved.lastChance();
      await summarising;
    },
  };
}
