import type { ProbeReading } from '#main';
import {
  createRandom,
  defaultRunSettings,
  type RequestAnswer,
  type Result,
  type Snapshot,
} from '#shared-core';
import { createBench, stepS } from './bench.ts';
import { createColleague } from './colleague.ts';
import { createComputerLife, litter } from './computer-life.ts';
import { drawFaults, type Fault } from './fault.ts';
import { findKept, type Look } from './find-kept.ts';
import { createJudge, type Violation } from './judge.ts';
import { createKeptThings } from './kept-things.ts';
import { type Ask, createPerson, teacher, viewer } from './person.ts';
import { plantInFiles, turnByte } from './plant.ts';
import type { PlantedFault } from './planted-fault.ts';
import { type Program, runsFolder, startProgram } from './program.ts';
import * as books from './run-book.ts';
import { runSecondProgram } from './second-program.ts';
import { createStepChecks } from './step-checks.ts';
import { createTrace } from './trace.ts';
import { createWindowRow } from './window-row.ts';

export interface WorldOutcome {
  readonly faults: readonly Fault[];
  readonly simulatedS: number;
  /** Of everything that any window was told, and when. */
  readonly traceHash: string;
  readonly heatOffS: number | null;
  readonly runs: number;
  readonly violation: Violation | null;
}

export interface WorldSetup {
  readonly seed: number;
  readonly lengthS?: number;
  /** Instead of those that the seed draws. */
  readonly faults?: readonly Fault[];
  /** Instead of the one that the seed draws. */
  readonly end?: 'power-cut' | 'clean';
  readonly planted?: PlantedFault;
}

/** A world lasts as long as a lesson's run. */
export const usualLengthS = 3600;
/** How often the person looks whether a run is under way, and the world at the whole record [steps]. */
const looksEvery = 10;
const auditsEvery = 1200;
/** The program and its probe are back within this time after all faults are over [s]. */
const heardWithinS = 3;
const savedWithinS = 5;

/** Runs one world to its end or to the first violation. The same setup gives the same trace. */
export async function runWorld(setup: WorldSetup): Promise<WorldOutcome> {
  const { planted, lengthS = usualLengthS } = setup;
  const random = createRandom(setup.seed);
  const faults = setup.faults ?? drawFaults(random.fork('faults'), lengthS);
  const drawnEnd = random.fork('end').uniform() < 0.5 ? 'power-cut' : 'clean';
  const bench = createBench(random, faults, lengthS);
  const { time, isOn, disk, lines, still, source } = bench;
  const { clock } = time.computer;
  const files = plantInFiles(disk.files, planted);
  const judge = createJudge(time.nowS);
  const settings = defaultRunSettings;

  const told = createTrace();
  const trace = (name: string, body: unknown) =>
    told.add(`${time.nowS()} ${name} ${JSON.stringify(body)}\n`);

  const all: books.RunBook[] = [];
  let book: books.RunBook | null = null;
  /** A run that the program is asked to go on with: what is heard from then on belongs to it. */
  let continuing: { readonly book: books.RunBook; readonly fromS: number } | null = null;
  let early: ProbeReading[] = [];
  /** The run that broke off last, and what was said to be saved of it. */
  let cutOff: { readonly book: books.RunBook; readonly savedToS: number | null } | null = null;
  let program: Program | null = null;
  let concluded: Snapshot | null = null;
  /** A run is being begun or gone on with: the monitor that is made now is its own. */
  let isBeginning = false;
  let headHeardS = Number.NEGATIVE_INFINITY;
  let heatOffS: number | null = null;

  /** Simulated time goes on until the answer is there. What never answers within ten minutes is stuck. */
  async function wait<T>(asked: Promise<T>): Promise<T | null> {
    let isThere = false;
    const watched = asked.finally(() => {
      isThere = true;
    });
    for (let turn = 0; turn < 6000; turn += 1) {
      await time.pass(turn === 0 ? 0 : 0.1);
      if (isThere) return watched;
    }
    judge.violated('program-comes-back', 'A request is never answered.');
    return null;
  }

  const ask: Ask = async (name, body, who = teacher, session = program?.session) => {
    const answer = session === undefined ? null : await wait(session.handle(name, body, who));
    return answer ?? { ok: false, error: 'no program' };
  };

  async function start(): Promise<void> {
    program = await wait(
      startProgram({
        time,
        files,
        lines,
        planted,
        holdsFolder: () =>
          !isOn('folder-is-taken') && !(planted === 'stays-shut' && all.length > 0),
        isBeginning: () => isBeginning,
        onFailedInside: (found) => judge.violated('no-request-fails-inside', found),
        onReadings(readings) {
          if (readings.some(({ channel }) => channel === 'head')) headHeardS = time.nowS();
          if (book !== null) books.hear(book, readings);
          else early.push(...readings);
        },
        onMonitor(monitor) {
          const startedAtS = continuing?.fromS ?? clock.monotonicS();
          book = continuing?.book ?? books.createRunBook(monitor, startedAtS);
          Object.assign(book, { monitor, startedAtS });
          if (continuing !== null) books.hear(book, early);
          early = [];
          continuing = null;
          cutOff = null;
          if (!all.includes(book)) all.push(book);
        },
        onConcluded(snapshot) {
          concluded = snapshot;
        },
      }),
    );
    if (program === null) return;
    const { session } = program;
    session.on('inputs', (body) => {
      book?.told.push(...body.inputs);
      trace('inputs', body);
    });
    session.on('recording', (status) => trace('recording', status));
    session.on('snapshot', ({ snapshot }) =>
      trace('snapshot', [snapshot.timeS, snapshot.head, snapshot.alarms]),
    );
    windows.open(session);
    await checkKept();
  }

  const windows = createWindowRow({ time, isOn, planted });
  const kept = createKeptThings();
  const colleague = createColleague({
    random: random.fork('colleague'),
    judge,
    kept,
    isOn,
    program: () => program,
    runsOver: () => all.filter(({ isOver }) => isOver).map(({ runId }) => runId),
    runNow: () => (book === null || book.runId === '' ? null : book),
  });

  /** What was said to be kept stands in the books, of this program and of the next. */
  async function checkKept(): Promise<void> {
    await wait(colleague.rest());
    const look: Look = async (name, body) => {
      const answer = await ask(name, body);
      if (answer.ok) return answer.value as never;
      judge.violated('program-comes-back', `${name}: ${JSON.stringify(answer.error)}.`);
      return null;
    };
    kept.check(judge, await findKept(look));
  }

  async function ended(how: 'power-cut' | 'program-killed'): Promise<void> {
    windows.close();
    const status = program?.session.recordingStatus();
    program = null;
    concluded = null;
    if (book !== null && book.runId !== '' && status !== undefined) {
      cutOff = { book, savedToS: status.savedToS };
      await checkCutOff(how === 'program-killed' && status.state === 'recording');
    } else if (how === 'power-cut') {
      // A program that was killed left on its way to the disk what it had not said to be saved.
      await checkCutOff(false);
    }
    book = null;
  }

  async function checkCutOff(diskTookAll: boolean): Promise<void> {
    if (cutOff === null) return;
    const found = await books.findRun(disk.files, cutOff.book.runId);
    books.checkCutOff(judge, cutOff.book, found, { savedToS: cutOff.savedToS, diskTookAll });
  }

  /** The person goes on with a run that was cut off, or begins one. */
  async function takeUp(): Promise<void> {
    if (program === null || isOn('person-stops-the-run')) return;
    if (program.session.recordingStatus().runId !== null) return;
    await wait(colleague.rest());
    isBeginning = true;
    await takeUpRun();
    isBeginning = false;
  }

  async function takeUpRun(): Promise<void> {
    const unfinished = await ask('run/unfinished', {});
    const offered = unfinished.ok
      ? (unfinished.value as RequestAnswer<'run/unfinished'>).run
      : null;
    const known = all.find(({ runId, isOver }) => runId === offered?.runId && !isOver);
    if (known !== undefined) {
      continuing = { book: known, fromS: clock.monotonicS() };
      early = [];
      const gone = await ask('run/continue', { runId: known.runId });
      if (!gone.ok) continuing = null;
      return;
    }
    const connected = await ask('probe/connect', { source });
    if (!connected.ok) return;
    const begun = (await ask('run/start', { settings })) as Result<{ runId: string }, unknown>;
    if (begun.ok && book !== null) book.runId = begun.value.runId;
  }

  async function stopRun(): Promise<void> {
    const ending = book;
    if (ending === null || program === null) return;
    ending.endsAtS = clock.monotonicS();
    const stopped = await ask('run/stop', {});
    ending.isOver = true;
    book = null;
    concluded = null;
    if (planted === 'byte-turned') await turnByte(files, `${runsFolder}/${ending.runId}`);
    // A disk that took nothing to the end has not all of the run, and that was said.
    if (!stopped.ok) return;
    const found = await books.findRun(files, ending.runId);
    books.checkRecord(judge, ending, found);
    const page = await wholeRun(ending.runId);
    if (page !== null) books.checkReplay(judge, ending, page, found);
  }

  async function wholeRun(runId: string): Promise<RequestAnswer<'runs/read'> | null> {
    const inputs: RequestAnswer<'runs/read'>['inputs'] = [];
    for (let next: number | null = 0; next !== null; ) {
      const read = await ask('runs/read', { runId, fromIndex: next });
      if (!read.ok) {
        judge.violated('program-comes-back', `Run ${runId}: ${JSON.stringify(read.error)}.`);
        return null;
      }
      const page = read.value as RequestAnswer<'runs/read'>;
      inputs.push(...page.inputs);
      next = page.nextIndex;
      if (next === null) return { ...page, inputs };
    }
    return null;
  }

  /** The run under way, as a window would read it. */
  async function audit(): Promise<void> {
    const running = book;
    if (running === null || running.runId === '') return;
    const heard = running.heard.slice();
    const page = await wholeRun(running.runId);
    if (page === null) return;
    books.checkReadings(judge, heard, books.readingsIn(page.inputs).slice(0, heard.length), 0);
    books.checkMarks(judge, running, page.inputs);
  }

  const person = createPerson({
    ask,
    still,
    source,
    random: random.fork('person'),
    isOn,
    concluded: () => concluded,
    marked: (markId) => void book?.marks.push(markId),
  });
  const life = createComputerLife({
    bench,
    random,
    program: () => program,
    ended,
    start,
    wait,
  });
  const check = createStepChecks(judge);

  async function begin({ kind, fromS, toS }: Fault): Promise<void> {
    const seconds = toS - fromS;
    if (kind === 'wall-clock-is-set') time.computer.setWall(seconds % 2 === 0 ? 3600 : -3600);
    if (program === null || !time.computer.isRunning()) return;
    if (kind === 'viewer-gives-orders') {
      const who = planted === 'viewer-obeyed' ? teacher : viewer;
      const mark = { type: 'note', text: 'from the back row' };
      const orders = [
        await ask('run/mark', { mark }, who),
        await ask('run/start', { settings }, who),
        await ask('runs/trash', { runId: book?.runId ?? 'x' }, who),
        ...(planted === undefined
          ? [await ask('run/stop', {}, who), await ask('probe/disconnect', {}, who)]
          : []),
      ];
      if (orders.some(({ ok }) => ok)) judge.violated('viewer-commands-nothing', 'It was obeyed.');
    }
    if (kind === 'person-writes-a-note') await person.note(`at ${fromS}`);
    if (kind === 'person-stops-the-run') await stopRun();
    if (kind === 'second-program' && book !== null) {
      await runSecondProgram({ bench, judge, ask, wait, settings, runId: book.runId, planted });
    }
    if (kind === 'folder-is-littered' && book !== null)
      await litter(disk.files, runsFolder, book.runId);
  }

  const begun = new Set<Fault>();
  await start();
  await time.pass(3);
  await takeUp();
  const beginsS = time.nowS();
  if (book === null) throw new Error(`Seed ${setup.seed}: the run does not begin.`);

  for (let step = 1; time.nowS() - beginsS < lengthS && judge.violation() === null; step += 1) {
    if (planted === 'never-back' && time.nowS() > 30) bench.pullOut();
    for (const fault of faults) {
      if (begun.has(fault) || fault.fromS > time.nowS()) continue;
      begun.add(fault);
      await begin(fault);
    }
    await life.step();
    await time.pass(stepS);
    const runningSinceS = life.runningSinceS();
    if (program !== null && runningSinceS !== null) {
      windows.step((program as Program).session);
      await person.step();
      colleague.step();
      if (step % looksEvery === 0) await takeUp();
      if (step % auditsEvery === 0) {
        await audit();
        await checkKept();
      }
    }
    const nowS = time.nowS();
    const dueS = check({
      nowS,
      runningSinceS,
      program,
      book,
      windows: windows.all,
      concluded,
      headHeardS,
    });
    heatOffS ??= dueS;
  }
  if (judge.violation() === null) await checkEnd();
  return {
    faults,
    simulatedS: Math.round(time.nowS() * 1000) / 1000,
    traceHash: told.digest(),
    heatOffS,
    runs: all.length,
    violation: judge.violation(),
  };

  async function checkEnd(): Promise<void> {
    const state = program?.hub.status().state;
    const heardAgoS = time.nowS() - headHeardS;
    if (state !== 'hearing' || heardAgoS > heardWithinS) {
      judge.violated('program-comes-back', `The probe is ${state}, heard ${heardAgoS} s ago.`);
    }
    const recorder = program?.session.recordingStatus();
    const unsavedS = (book?.told.at(-1)?.timeS ?? 0) - (recorder?.savedToS ?? 0);
    if (recorder?.state !== 'recording' || unsavedS > savedWithinS) {
      judge.violated('program-comes-back', `${recorder?.state}, ${unsavedS} s not saved.`);
    }
    if ((setup.end ?? drawnEnd) === 'clean') await stopRun();
    else {
      program?.kill();
      disk.cutPower(random.fork('power'));
      await ended('power-cut');
      await start();
      await takeUp();
      const { state: again } = (program as Program | null)?.session.recordingStatus() ?? {};
      if (again !== 'recording') judge.violated('program-comes-back', `After the cut: ${again}.`);
      await stopRun();
    }
    await checkLibrary();
    await checkKept();
    if (program !== null) await wait(program.session.close());
  }

  /** Every run that was ever begun is there and can be opened. */
  async function checkLibrary(): Promise<void> {
    const listed = await ask('runs/list', {});
    const runs = listed.ok ? (listed.value as RequestAnswer<'runs/list'>).runs : [];
    for (const { runId } of all) {
      const line = runs.find((run) => run.runId === runId);
      if (line === undefined || line.unreadable !== null) {
        judge.violated('program-comes-back', `Run ${runId}: ${JSON.stringify(line ?? null)}.`);
      } else if (runId !== all.at(-1)?.runId) await wholeRun(runId);
    }
  }
}
