import { uptime } from 'node:os';
import path from 'node:path';
import {
  type EventBody,
  type EventName,
  fail,
  type Monitor,
  type Result,
  type RunSettings,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import { type Clock, type Scheduler, systemScheduler } from '../clock/index.ts';
import { createFermentMemory, createWarmthKeeper } from '../ferments/index.ts';
import { type FileLayer, nodeFileLayer } from '../file-layer/index.ts';
import {
  createRememberingProbeHub,
  type ProbeHub,
  probesFileName,
  sourceAsNow,
} from '../probe/index.ts';
import { createProblemLog, makeProblemReport } from '../problem-report/index.ts';
import { createRigMemory } from '../rigs/index.ts';
import { createRunLibrary, lockFolder } from '../run-library/index.ts';
import type { SideProcess } from '../side-process/index.ts';
import { answerRequest } from './answer-request.ts';
import { type AppFacts, createAppHandlers } from './app-handlers.ts';
import { createDesk } from './desk/create-desk.ts';
import { doubtfulFiles } from './doubtful-files.ts';
import { createEventHub } from './event-hub.ts';
import { createExchange } from './exchange-handlers.ts';
import { createFermentHandlers } from './ferment-handlers.ts';
import { createFolderHold } from './folder-hold.ts';
import { createKnownFolders, noFoldersKnown } from './known-folders.ts';
import { createProbeBeforeRehearsal } from './probe-before-rehearsal.ts';
import { noteProblems, noteRefusal } from './problem-notes.ts';
import { underWayFromMemory } from './reading-handlers.ts';
import { createRecording } from './recording.ts';
import type { Asker, RequestHandlers } from './request-handlers.ts';
import { createRigHandlers } from './rig-handlers.ts';
import { createRunHandlers } from './run-handlers.ts';
import { createWarmthHandlers } from './warmth-handlers.ts';

export interface SessionSetup {
  readonly probeHub: ProbeHub;
  readonly clock: Clock;
  readonly createMonitor: (settings: RunSettings) => Monitor;
  readonly runsFolder: string;
  readonly app: AppFacts;
  readonly fileLayer?: FileLayer;
  readonly scheduler?: Scheduler;
  /** Where this computer keeps which folders of runs have been there; where there is none, each start is the first. */
  readonly knownFoldersFile?: string;
  /** How the folder is taken for this process alone. */
  readonly takeFolder?: typeof lockFolder;
  /** Seconds since the computer was started, sleep included. */
  readonly uptimeS?: () => number;
  /** Starts the process that goes through whole runs; where there is none, this one does it beside the record. */
  readonly startDesk?: () => SideProcess;
}

/** Everything behind the contract, whatever shell carries it. */
export interface Session {
  handle(name: string, body: unknown, asker: Asker): Promise<Result<unknown, ServiceProblem>>;
  on<N extends EventName>(name: N, listener: (body: EventBody<N>) => void): () => void;
  /** What the recorder has safely on disk; shells keep the computer awake while it records. */
  recordingStatus(): EventBody<'recording'>;
  /** The computer is about to sleep. */
  suspend(): Promise<void>;
  resume(): Promise<void>;
  /** Ends a running run cleanly and lets go of probe and folder. */
  close(): Promise<void>;
}

/** The program itself, asking its own services. */
const teller: Asker = { mayCommand: false };

export async function createSession(setup: SessionSetup): Promise<Session> {
  const { clock, runsFolder, app } = setup;
  const scheduler = setup.scheduler ?? systemScheduler;
  const files = setup.fileLayer ?? nodeFileLayer;
  const events = createEventHub();

  const takeFolder = setup.takeFolder ?? lockFolder;
  const { knownFoldersFile: knownFile } = setup;
  const known = knownFile === undefined ? noFoldersKnown : createKnownFolders(files, knownFile);
  let tellFolder = () => {};
  const hold = await createFolderHold({
    files,
    runsFolder,
    takeFolder,
    scheduler,
    known,
    onChange: () => tellFolder(),
  });
  const { mayWrite } = hold;
  const library = createRunLibrary({ files, clock, runsFolder, mayWrite });
  if (mayWrite()) await library.recoverAll();
  let doubtful = await doubtfulFiles(files, runsFolder);
  const memoryFile = path.join(runsFolder, probesFileName);
  const probeHub = createRememberingProbeHub(setup.probeHub, { files, memoryFile, mayWrite });

  const beforeRehearsal = createProbeBeforeRehearsal(probeHub, (status) =>
    events.emit('probe', status),
  );
  const recording = createRecording({
    ...setup,
    probeHub,
    letGoOfStill: beforeRehearsal.comeBack,
    scheduler,
    files,
    library,
    mayWrite,
    uptimeS: setup.uptimeS ?? uptime,
    events,
    isFolderGone: hold.isGone,
  });
  ({ tellFolder } = recording);
  // Whoever goes on with a run saves what is unsure of it; that it may go on must not wait for this.
  const makeSure = async () => library.makeAllSure((await recording.unfinished())?.runId ?? null);
  if (mayWrite()) await makeSure();
  const problems = createProblemLog(clock);
  const stopListening = [
    ...noteProblems(problems, events, probeHub),
    probeHub.on('readings', (readings) => recording.addReadings(readings)),
    probeHub.on('givenUp', (givenUp) => recording.addGivenUp(givenUp)),
    probeHub.on('link', (change) => recording.addLink(change)),
    probeHub.on('status', (status) => events.emit('probe', beforeRehearsal.told(status))),
    probeHub.on('ports', (ports) => events.emit('ports', { ports: [...ports] })),
  ];

  const onPack = (progress: EventBody<'pack'>) => events.emit('pack', progress);
  const exchange = createExchange({ ...setup, files, library, mayWrite, recording, onPack });
  const desk =
    setup.startDesk === undefined
      ? null
      : createDesk({
          startProcess: setup.startDesk,
          scheduler,
          runsFolder,
          app,
          mayWrite,
          underWay: recording.underWay,
          notSaved: recording.notSaved,
          onPack,
        });
  let noted: Promise<unknown> | null = null;
  const rigs = createRigMemory({ files, clock, runsFolder, mayWrite, ports: probeHub.listPorts });
  const ferments = createFermentMemory({ files, clock, runsFolder, mayWrite });
  const warmth = createWarmthKeeper({
    files,
    clock,
    scheduler,
    runsFolder,
    mayWrite,
    fermentOf: ferments.find,
    probe: {
      status: probeHub.status,
      async reconnect(source) {
        await probeHub.connect(sourceAsNow(source, await probeHub.listPorts()));
      },
    },
    isRunUnderWay: () => recording.current() !== null,
    onNow: (kept) => events.emit('warmth', { kept }),
  });
  stopListening.push(probeHub.on('readings', warmth.seeReadings));
  const runHandlers = createRunHandlers({ ...setup, files, library, mayWrite, recording });
  const handlers: RequestHandlers = {
    ...runHandlers,
    ...exchange.handlers,
    ...desk?.handlers,
    ...underWayFromMemory(recording, { ...runHandlers, ...desk?.handlers }),
    ...createRigHandlers(rigs),
    ...createFermentHandlers(ferments),
    ...createWarmthHandlers(warmth),
    ...createAppHandlers(app, runsFolder),
    async 'problem-report/make'({ withRunNames, window }) {
      const listed = await handlers['runs/list']({}, teller);
      return succeed(
        await makeProblemReport({
          app,
          nowMs: clock.wallMs(),
          files,
          runsFolder,
          mayWrite: mayWrite(),
          runs: listed.ok ? listed.value.runs : null,
          doubtfulFiles: doubtful.map(({ name, state }) => `${name}: ${state}`),
          status: probeHub.status(),
          ports: await probeHub.listPorts(),
          recording: recording.status(),
          recentProblems: [...problems.recent()],
          window,
          withRunNames,
        }),
      );
    },
    async 'folder/make-anew'() {
      const made = await hold.makeAnew();
      return made.ok ? succeed({}) : made;
    },
    'kept-files/doubtful': async () => succeed({ files: [...doubtful] }),
    async 'run/start'(body, asker) {
      const started = await runHandlers['run/start'](body, asker);
      // Whether it can be noted is no matter of the run, nor how long the disk takes for it.
      if (started.ok && probeHub.status().source?.kind === 'demo') noted = rigs.noteRehearsal();
      return started;
    },
    'ports/list': async () => succeed({ ports: [...(await probeHub.listPorts())] }),
    'probe/status': async () => succeed(beforeRehearsal.told(probeHub.status())),
    async 'probe/connect'({ source }) {
      const { runId, header } = recording.current() ?? {};
      // The time of a run has one scale from its beginning to its end.
      if (runId !== undefined && source.timeScale !== header?.timeScale) {
        return fail({ kind: 'already-recording', runId });
      }
      return beforeRehearsal.connect(source);
    },
    async 'probe/find'({ path }) {
      const runId = recording.current()?.runId;
      if (runId !== undefined) return fail({ kind: 'already-recording', runId });
      beforeRehearsal.forget();
      await probeHub.disconnect();
      return probeHub.find(path);
    },
    async 'probe/disconnect'() {
      beforeRehearsal.forget();
      await probeHub.disconnect();
      return succeed({});
    },
  };

  if (mayWrite()) await warmth.goOn();
  hold.keepAsking(async () => {
    await library.recoverAll();
    doubtful = await doubtfulFiles(files, runsFolder);
    await warmth.goOn();
  }, makeSure);

  return {
    async handle(name, body, asker) {
      const result = await hold.explained(await answerRequest(handlers, name, body, asker));
      noteRefusal(problems, name, result);
      return result;
    },
    on: events.on,
    recordingStatus: recording.status,
    suspend: () => probeHub.suspend(),
    async resume() {
      recording.checkClocks();
      await probeHub.resume();
    },
    async close() {
      await recording.close();
      await noted;
      for (const stop of stopListening) stop();
      await warmth.close();
      await probeHub.close();
      await desk?.close();
      await exchange.close();
      if (mayWrite()) await library.makeAllSure(null);
      await hold.release();
    },
  };
}
