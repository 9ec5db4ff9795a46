import {
  type EventBody,
  fail,
  type LogHeader,
  type Mark,
  type MarkBody,
  type ProbeSource,
  type Result,
  type RunSettings,
  runLogVersion,
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
  /** What the library can't read from the files of the running run. */
  liveView(runId: string): LiveView | undefined;
  /** The running run as windows are told it; null for any other. */
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
    if (running === null || recorder === null) {
      return { state: 'idle', runId: null, startedAtIso: null, savedToS: null, problem: gone };
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
    };
  }

  const tellStatus = () => events.emit('recording', status());
  const unfinished = createUnfinished({ ...setup, readClocks: readNow });

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
    const made = await library.makeRunFolder(wallMs);
    if (!made.ok) return fail(serviceProblemOf(made.error));
    const { runId, folder } = made.value;
    const header: LogHeader = {
      format: 'still-head-run-log',
      version: runLogVersion,
      runId,
      startedAtIso: new Date(wallMs).toISOString(),
      settings: patient(settings, source.timeScale),
      appVersion: app.version,
      modelVersion: app.modelVersion,
      timeScale: source.timeScale,
      rehearsal: source.kind === 'demo' || source.timeScale !== 1,
      source,
      origin: 'recorded',
    };
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
    if (running !== null) tellStatus();
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
    const { runId, run, stopTimers } = ending;
    stopTimers();
    const stopped = await run.stop((endedS) => {
      running = { ...ending, endedS };
      tellStatus();
    });
    running = null;
    if (ending.header.source?.kind === 'demo') await setup.letGoOfStill();
    tellStatus();
    // Whoever lists the runs then has it at hand; a disk that holds what is looked at keeps nobody waiting who stops a run.
    summarising = library.summary(runId);
    return stopped.ok ? succeed({ runId }) : fail(serviceProblemOf(stopped.error));
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

  function liveView(runId: string): LiveView | undefined {
    if (running?.runId !== runId) return undefined;
    const { header, run } = running;
    return {
      known: { summary: run.summary(), header, hasTornEnd: false },
      unsaved: run.unsaved(),
    };
  }

  return {
    status,
    tellFolder: tellStatus,
    current: () => running,
    liveView,
    told: (runId) => (running?.runId === runId ? running.run : null),
    underWay() {
      const view = running === null ? undefined : liveView(running.runId);
      return running === null || view === undefined ? null : { runId: running.runId, view };
    },
    start: (settings) =>
      begin(async () => {
        const started = await startRun(settings);
        if (!started.ok && probeHub.status().source?.kind === 'demo') await setup.letGoOfStill();
        return started;
      }),
    unfinished: async () => (running === null && !starting ? unfinished.find() : null),
    goOn: (runId) => begin(() => continueRun(runId)),
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
      await summarising;
    },
  };
}

/**
 * Longest hitch of a busy computer that is no silence of the probe [s of real time]. One of a third of a second was measured with the
 * window, its browser and this program on two processors; a simulated still can't be unplugged, so patience costs nothing.
 */
const hitchS = 1;

/** In a rehearsal seconds fly: a hitch of the computer would look like minutes of silence. */
function patient(settings: RunSettings, timeScale: number): RunSettings {
  const { probe } = settings;
  const silenceS = Math.max(probe.silenceS, hitchS * timeScale);
  return { ...settings, probe: { ...probe, silenceS } };
}
