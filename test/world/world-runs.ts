import type { FileLayer, ProbeReading, Session } from '#main';
import type {
  EventBody,
  Monitor,
  RequestAnswer,
  Result,
  RunInput,
  ServiceProblem,
} from '#shared-core';
import { type Ask, type Asking, teacher } from './asking.ts';
import type { Judge } from './judge.ts';
import { turnByte } from './plant.ts';
import type { PlantedFault } from './planted-fault.ts';
import { runsFolder } from './program.ts';
import * as books from './run-book.ts';

export interface WorldRunsParts {
  readonly judge: Judge;
  readonly ask: Ask;
  readonly wait: Asking['wait'];
  readonly session: () => Session | null;
  /** By the clock of the computer [s]. */
  readonly clockS: () => number;
  /** As the program has it, and as it is. */
  readonly files: FileLayer;
  readonly disk: FileLayer;
  /** The folder is gone: nobody expects to read a run. */
  readonly isAway: () => boolean;
  /** The disk holds its answers: what is on its way to it is lost with the program. */
  readonly isHeld: () => boolean;
  readonly planted: PlantedFault | undefined;
}

/** Every run of a world: what was heard and told of it, held against its record. */
export interface WorldRuns {
  readonly all: readonly books.RunBook[];
  /** The run under way. */
  now(): books.RunBook | null;
  /** A run is being begun or gone on with: the monitor that is made now is its own. */
  isBeginning(): boolean;
  hear(readings: readonly ProbeReading[]): void;
  beginWith(monitor: Monitor): void;
  tell(inputs: readonly RunInput[]): void;
  /** Somebody does what begins a run; answers whether one goes on. */
  begin(act: () => Promise<boolean>): Promise<boolean>;
  /** Goes on with the run that was cut off; answers whether there is one. */
  goOn(): Promise<boolean>;
  stop(): Promise<void>;
  /** Asks for the end; what comes of it is looked at in a step to come. */
  askToStop(): void;
  /** Somebody has asked for the end of the run under way, and has no answer yet. */
  isStopping(): boolean;
  step(): Promise<void>;
  /** Nothing stands in the way of the disk any more: no run that is over waits for it. */
  checkAllSaved(): Promise<void>;
  /** The run under way, as a window would read it. */
  audit(): Promise<void>;
  /** The program is gone; `status` is what it said last. */
  cutOff(how: 'power-cut' | 'program-killed', status: EventBody<'recording'> | null): Promise<void>;
  /** Somebody deletes the folder of the run under way, believing it an old one. */
  tidyAway(): Promise<void>;
  /** What is told of the record. */
  told(status: EventBody<'recording'>): void;
  /** A stick was pulled out: of the run under way its files may be scarred, of one that broke off all may be lost that was not said to be saved. */
  pulledOut(): Promise<void>;
  /** Every run that was ever begun is there and can be opened. */
  checkLibrary(): Promise<void>;
}

export function createWorldRuns(parts: WorldRunsParts): WorldRuns {
  const { judge, ask, wait, clockS, files, disk, isAway, planted } = parts;
  const all: books.RunBook[] = [];
  let now: books.RunBook | null = null;
  /** A run that the program is asked to go on with: what is heard from then on belongs to it. */
  let continuing: { readonly book: books.RunBook; readonly fromS: number } | null = null;
  let early: ProbeReading[] = [];
  /** The run that broke off last, and what was said to be saved of it. */
  let brokeOff: { readonly book: books.RunBook; readonly savedToS: number | null } | null = null;
  let isBeginning = false;
  let stopping: { readonly book: books.RunBook; readonly answer: Promise<boolean> } | null = null;
  let stopped: { readonly book: books.RunBook; readonly isSaved: boolean } | null = null;
  /** Runs that are over, of which it was said that the disk has not taken all. */
  const notSaved = new Set<books.RunBook>();

  async function beginning<T>(act: () => Promise<T>): Promise<T> {
    isBeginning = true;
    try {
      return await act();
    } finally {
      isBeginning = false;
    }
  }

  async function checkBrokenOff(diskTookAll: boolean): Promise<void> {
    if (brokeOff === null) return;
    const { book, savedToS } = brokeOff;
    const found = await books.findRun(disk, book.runId);
    books.checkCutOff(judge, book, found, { savedToS, diskTookAll });
  }

  async function whole(runId: string): Promise<RequestAnswer<'runs/read'> | null> {
    const inputs: RequestAnswer<'runs/read'>['inputs'] = [];
    for (let next: number | null = 0; next !== null; ) {
      const read: Result<RequestAnswer<'runs/read'>, ServiceProblem> = await ask('runs/read', {
        runId,
        fromIndex: next,
      });
      if (!read.ok && isAway()) return null;
      if (!read.ok) {
        judge.violated('program-comes-back', `Run ${runId}: ${JSON.stringify(read.error)}.`);
        return null;
      }
      inputs.push(...read.value.inputs);
      next = read.value.nextIndex;
      if (next === null) return { ...read.value, inputs };
    }
    return null;
  }

  function askToStop(): void {
    const ending = now;
    const session = parts.session();
    if (ending === null || session === null || stopping !== null) return;
    ending.isStopping = true;
    const answer = session.handle('run/stop', {}, teacher).then(({ ok }) => {
      if (stopping?.book === ending) stopped = { book: ending, isSaved: ok };
      return ok;
    });
    stopping = { book: ending, answer };
  }

  /** What became of a stop that was answered. */
  async function takeStop(): Promise<void> {
    if (stopped === null) return;
    const { book: ending, isSaved } = stopped;
    stopping = null;
    stopped = null;
    ending.isOver = true;
    now = null;
    if (planted === 'byte-turned') await turnByte(files, `${runsFolder}/${ending.runId}`);
    // A disk that took nothing to the end has not all of the run, and that was said.
    if (isSaved) await checkSaved(ending);
    else notSaved.add(ending);
  }

  async function checkSaved(ending: books.RunBook): Promise<void> {
    const found = await books.findRun(disk, ending.runId);
    books.checkRecord(judge, ending, found);
    const page = await whole(ending.runId);
    if (page !== null) books.checkReplay(judge, ending, page, found);
  }

  /** As long as it is told that a run is not saved it may not be; from then on it is. */
  async function checkNotSaved(): Promise<void> {
    const told = parts.session()?.recordingStatus().notSaved ?? [];
    for (const ending of notSaved) {
      if (told.some(({ runId }) => runId === ending.runId)) continue;
      notSaved.delete(ending);
      const { inputs } = await books.findRun(disk, ending.runId);
      const counts = `${ending.told.length} inputs told, ${inputs.length} on record`;
      if (inputs.length < ending.told.length) judge.violated('ended-run-is-saved', `${counts}.`);
      else await checkSaved(ending);
    }
  }

  return {
    all,
    now: () => now,
    isBeginning: () => isBeginning,
    hear(readings) {
      if (now !== null) books.hear(now, readings);
      else early.push(...readings);
    },
    beginWith(monitor) {
      const startedAtS = continuing?.fromS ?? clockS();
      now = continuing?.book ?? books.createRunBook(monitor, startedAtS);
      Object.assign(now, { monitor, startedAtS, isStopping: false });
      if (continuing !== null) books.hear(now, early);
      early = [];
      continuing = null;
      brokeOff = null;
      if (!all.includes(now)) all.push(now);
    },
    tell: (inputs) => void now?.told.push(...inputs),
    begin: (act) =>
      beginning(async () => {
        const isBegun = await act();
        const status = await ask('run/status', {});
        if (now !== null && status.ok) now.runId = status.value.runId ?? '';
        return isBegun;
      }),
    goOn: () =>
      beginning(async () => {
        const unfinished = await ask('run/unfinished', {});
        const offered = unfinished.ok ? unfinished.value.run?.runId : undefined;
        const book = all.find(({ runId, isOver }) => runId === offered && !isOver);
        if (book === undefined) return false;
        continuing = { book, fromS: clockS() };
        early = [];
        const gone = await ask('run/continue', { runId: book.runId });
        if (!gone.ok) continuing = null;
        return true;
      }),
    async stop() {
      if (now === null) return;
      askToStop();
      if (stopping !== null) await wait(stopping.answer);
      await takeStop();
    },
    askToStop,
    isStopping: () => stopping !== null,
    async step() {
      await takeStop();
      if (notSaved.size > 0) await checkNotSaved();
    },
    async checkAllSaved() {
      await checkNotSaved();
      for (const { runId } of notSaved) judge.violated('ended-run-is-saved', `${runId} is not.`);
    },
    async audit() {
      if (now === null || now.runId === '' || isAway()) return;
      const running = now;
      const heard = running.heard.slice();
      const page = await whole(running.runId);
      if (page === null) return;
      books.checkReadings(judge, heard, books.readingsIn(page.inputs).slice(0, heard.length), 0);
      books.checkMarks(judge, running, page.inputs);
    },
    async cutOff(how, status) {
      // What of them was in memory alone is gone.
      notSaved.clear();
      stopping = null;
      stopped = null;
      if (now?.isLostUntold) {
        // Nobody can save what was deleted a moment before the program was gone.
        all.splice(all.indexOf(now), 1);
        brokeOff = null;
      } else if (now !== null && now.runId !== '' && status !== null) {
        brokeOff = { book: now, savedToS: status.savedToS };
        await checkBrokenOff(
          how === 'program-killed' && status.state === 'recording' && !parts.isHeld(),
        );
      } else if (how === 'power-cut') {
        // A program that was killed left on its way to the disk what it had not said to be saved.
        await checkBrokenOff(false);
      }
      now = null;
    },
    async tidyAway() {
      if (now === null || now.runId === '' || now.isStopping || isAway() || parts.isHeld()) return;
      await disk.remove(`${runsFolder}/${now.runId}`);
      now.isLostUntold = true;
    },
    told({ state, runId }) {
      if (now?.runId === '' && runId !== null) now.runId = runId;
      if (now !== null && state === 'failed') now.isLostUntold = false;
    },
    async pulledOut() {
      if (now === null) await checkBrokenOff(false);
      else books.noteScars(now, await books.findRun(disk, now.runId));
      for (const book of notSaved) books.noteScars(book, await books.findRun(disk, book.runId));
    },
    async checkLibrary() {
      const listed = await ask('runs/list', {});
      const runs = listed.ok ? listed.value.runs : [];
      for (const { runId } of all) {
        const line = runs.find((run) => run.runId === runId);
        if (line === undefined || line.unreadable !== null) {
          judge.violated('program-comes-back', `Run ${runId}: ${JSON.stringify(line ?? null)}.`);
        } else if (runId !== all.at(-1)?.runId) await whole(runId);
      }
    },
  };
}
