import os from 'node:os';
import process from 'node:process';
import type { EventBody, PortInfo, ProbeStatus, RequestBody, RunSummary } from '#shared-core';
import type { FileLayer } from '../file-layer/index.ts';
import { problemInShort } from './problem-in-short.ts';
import type { ProblemReport } from './problem-log.ts';
import { everyText, type Private, withoutPrivate } from './without-private.ts';

type WindowFacts = NonNullable<RequestBody<'problem-report/make'>['window']>;

export interface ReportParts {
  readonly app: { readonly version: string; readonly modelVersion: string; readonly shell: string };
  readonly nowMs: number;
  readonly files: FileLayer;
  readonly runsFolder: string;
  readonly mayWrite: boolean;
  /** Null where the library can't be read. */
  readonly runs: readonly RunSummary[] | null;
  readonly doubtfulFiles: readonly string[];
  readonly status: ProbeStatus | null;
  readonly ports: readonly PortInfo[];
  readonly recording: EventBody<'recording'> | null;
  readonly recentProblems: ProblemReport['recentProblems'];
  readonly window: WindowFacts | null;
  readonly withRunNames: boolean;
  /** Whose computer it is, as the system says. */
  readonly owner?: Owner;
}

export interface Owner {
  readonly userName: string;
  readonly homeFolder: string;
  readonly hostName: string;
}

const megabyte = 1e6;
const inMb = (bytes: number) => Math.round(bytes / megabyte);

/**
 * Gathers the report; whatever leads to a person is taken out of every text of it last, wherever it came from. Moments and versions are this
 * program's own: a run that is called “2026” must not make them unreadable.
 */
export async function makeProblemReport(parts: ReportParts): Promise<ProblemReport> {
  const { app, files, runsFolder, runs, withRunNames } = parts;
  const free = await files.freeBytes(runsFolder);
  const put = await files.list(runsFolder);
  const aside = put.ok ? put.value.map(({ name }) => name).filter(isPutAside) : [];
  const names = [...new Set((runs ?? []).map(({ name }) => name))];
  const report = {
    format: 'still-head-problem-report',
    version: 1,
    madeAtIso: new Date(parts.nowMs).toISOString(),
    program: { ...app, runningForS: Math.round(process.uptime()) },
    computer: {
      platform: process.platform,
      release: os.release(),
      architecture: process.arch,
      node: process.version,
      processors: os.cpus().length,
      memoryMb: inMb(os.totalmem()),
      freeMemoryMb: inMb(os.freemem()),
      runningForS: Math.round(os.uptime()),
    },
    folder: {
      freeMb: free.ok ? inMb(free.value) : null,
      mayWrite: parts.mayWrite,
      runs: runs?.length ?? null,
      cutOffRuns: (runs ?? []).filter(({ ended }) => ended === 'cut-off').length,
      unreadableRuns: (runs ?? []).filter(({ unreadable }) => unreadable !== null).length,
      unreadableBecause: reasonsOf(runs ?? []),
      damagedRecords: (runs ?? []).reduce((sum, run) => sum + run.damagedRecords, 0),
      doubtfulFiles: [...parts.doubtfulFiles, ...aside],
    },
    probe: parts.status && probeFacts(parts.status),
    ports: parts.ports.map(({ vendorId, productId, likelyProbe }) => ({
      vendorId,
      productId,
      likelyProbe,
    })),
    recording: parts.recording && {
      state: parts.recording.state,
      problem: parts.recording.problem && problemInShort(parts.recording.problem),
      adviceStopped: parts.recording.adviceStopped ?? null,
      lostReadings: parts.recording.lostReadings ?? 0,
    },
    recentProblems: parts.recentProblems,
    window: parts.window,
  } as const satisfies Omit<ProblemReport, 'runNames'>;
  const secrets = [
    ...ownSecrets(parts.owner ?? thisOwner(), runsFolder),
    ...runSecrets(runs),
    ...portSecrets(parts.ports),
  ];
  const cleaned = everyText<ProblemReport>(report, (text) => withoutPrivate(text, secrets));
  const { format, madeAtIso, program } = report;
  const recentProblems = cleaned.recentProblems.map((problem, index) => ({
    ...problem,
    lastAtIso: parts.recentProblems[index]?.lastAtIso ?? '',
  }));
  return {
    ...cleaned,
    ...{ format, madeAtIso, program, recentProblems },
    ...(withRunNames && { runNames: names }),
  };
}

function reasonsOf(runs: readonly Pick<RunSummary, 'unreadable'>[]): string[] {
  const reasons = runs.flatMap(({ unreadable }) =>
    unreadable === null
      ? []
      : unreadable.message === ''
        ? unreadable.why
        : `${unreadable.why}: ${unreadable.message}`,
  );
  return [...new Set(reasons)];
}

function probeFacts(status: ProbeStatus): NonNullable<ProblemReport['probe']> {
  const { source } = status;
  const serial =
    source?.kind === 'several' ? source.probes : source?.kind === 'serial' ? [source] : [];
  return {
    state: status.state,
    kind: source?.kind ?? null,
    lines: serial.map(({ language, baudRate, parity }) => ({
      language,
      baudRate,
      parity: parity ?? null,
    })),
    channels: status.channels,
    readingsPerS: status.readingsPerS,
    rejectedLines: status.rejectedLines,
    droppedBytes: status.droppedBytes,
    droppedReadings: status.droppedReadings ?? 0,
    thinnedHeadReadings: status.thinnedHeadReadings ?? 0,
    problem: status.problem && problemInShort(status.problem),
    advice: status.advice,
  };
}

function isPutAside(name: string): boolean {
  return /\.(?:not-understood|older-version)(?:-\d+)?$/.test(name);
}

function ownSecrets(owner: Owner, runsFolder: string): readonly Private[] {
  return [
    { text: runsFolder, standsFor: '[folder of runs]' },
    { text: owner.homeFolder, standsFor: '[home]' },
    { text: owner.userName, standsFor: '[user]' },
    { text: owner.hostName, standsFor: '[computer]' },
  ];
}

function runSecrets(runs: ReportParts['runs']): readonly Private[] {
  return (runs ?? []).flatMap(({ runId, name }) => [
    // Nobody is called by a number, and numbers are half of what a report says.
    ...(/\p{L}/u.test(name) ? [{ text: name, standsFor: '[name of a run]' }] : []),
    // People rename folders too.
    ...(ownRunId.test(runId) ? [] : [{ text: runId, standsFor: '[folder of a run]' }]),
  ]);
}

/** Names that this program gives the folders of runs. */
const ownRunId = /^\d{8}T\d{6}Z(?:-\d+)?$/;

function portSecrets(ports: readonly PortInfo[]): readonly Private[] {
  return ports.flatMap(({ serialNumber }) =>
    serialNumber === null ? [] : [{ text: serialNumber, standsFor: '[serial number]' }],
  );
}

/** Some systems know no name for the account that a program runs under. */
function thisOwner(): Owner {
  const known = { homeFolder: os.homedir(), hostName: os.hostname() };
  try {
    return { ...known, userName: os.userInfo().username };
  } catch {
    return { ...known, userName: '' };
  }
}
