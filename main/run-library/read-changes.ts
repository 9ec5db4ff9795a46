import { fail, type LogRecord, type RecordedChange, type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { takeTurns } from '../turns/index.ts';
import {
  emptyReport,
  isStillThere,
  type RunPlace,
  readRunLog,
  type Trail,
} from './read-run-log.ts';

/** The stages, alarms and events of a run as they were written down at the time, and the versions of the monitor that concluded them. */
export interface RecordedConclusions {
  readonly changes: readonly RecordedChange[];
  readonly modelVersions: readonly string[];
}

/** Reads what was concluded in a run; of one that was read before, only what has been recorded since. */
export interface ChangesReader {
  read(folder: string): Promise<Result<RecordedConclusions, FileProblem>>;
}

/** What is known of a run up to a record of it. */
interface Known extends RecordedConclusions {
  readonly upToSeq: number;
  readonly place: RunPlace | null;
}

const nothingYet: Known = { changes: [], modelVersions: [], upToSeq: -1, place: null };
/** Runs that somebody replays beside each other. */
const mostRuns = 4;

export function createChangesReader(files: FileLayer): ChangesReader {
  const ofRuns = new Map<string, Known>();
  /** Whoever asks second finds what was read for the first. */
  const inTurn = takeTurns();

  async function knownOf(folder: string): Promise<Known> {
    const known = ofRuns.get(folder) ?? nothingYet;
    const isKnown = known.place !== null && (await isStillThere(files, folder, known.place));
    return isKnown ? known : nothingYet;
  }

  async function readOn(folder: string): Promise<Result<Known, FileProblem>> {
    const report = emptyReport();
    let known = await knownOf(folder);
    const trail: Trail = { place: known.place };
    for await (const batch of readRunLog(files, folder, report, trail)) {
      known = withRecords(known, batch);
    }
    if (report.problem !== null) return fail(report.problem);
    known = { ...known, ...trail };
    ofRuns.delete(folder);
    ofRuns.set(folder, known);
    for (const oldest of ofRuns.keys()) if (ofRuns.size > mostRuns) ofRuns.delete(oldest);
    return succeed(known);
  }

  return {
    read: (folder) =>
      inTurn(async () => {
        const known = await readOn(folder);
        if (!known.ok) return known;
        const { changes, modelVersions } = known.value;
        return succeed({ changes, modelVersions });
      }),
  };
}

function withRecords(known: Known, records: readonly LogRecord[]): Known {
  const modelVersions = new Set(known.modelVersions);
  const changes: RecordedChange[] = [];
  let { upToSeq } = known;
  for (const { body, stamp } of records) {
    if ('header' in body) modelVersions.add(body.header.modelVersion);
    if (stamp.seq <= upToSeq || body.kind === 'segment') continue;
    upToSeq = stamp.seq;
    if (body.kind === 'continued') modelVersions.add(body.modelVersion);
    if (body.kind === 'change') changes.push(asRecorded(body.change));
  }
  return {
    ...known,
    upToSeq,
    changes: changes.length === 0 ? known.changes : [...known.changes, ...changes],
    modelVersions: [...modelVersions],
  };
}

type LoggedChange = Extract<LogRecord['body'], { readonly kind: 'change' }>['change'];

/** Without the picture of everything that a call was recorded with. */
export function asRecorded(change: LoggedChange): RecordedChange {
  if (change.kind !== 'alarm-changed') return change;
  const { snapshot: _, ...withoutSnapshot } = change;
  return withoutSnapshot;
}
