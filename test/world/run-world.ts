import type { Snapshot } from '#shared-core';
import { createRandom } from '../../shared-core/random/create-random.ts';
import { createAsking } from './asking.ts';
import { createBench, stepS } from './bench.ts';
import { createColleague } from './colleague.ts';
import { createComputerLife } from './computer-life.ts';
import { drawFaults, type Fault } from './fault.ts';
import { findKept, type Look } from './find-kept.ts';
import { createHeldDiskCheck } from './held-disk.ts';
import { createJudge } from './judge.ts';
import { createKeptThings } from './kept-things.ts';
import { createLostFolderCheck } from './lost-folder.ts';
import { createPerson } from './person.ts';
import { plantInFiles } from './plant.ts';
import { type Program, startProgram } from './program.ts';
import { createRehearsal } from './rehearsal.ts';
import { createStepChecks } from './step-checks.ts';
import { createSuddenFaults } from './sudden-faults.ts';
import { createTrace } from './trace.ts';
import { createWarmthBook } from './warmth-book.ts';
import { createWindowRow } from './window-row.ts';
import { createWorldRuns } from './world-runs.ts';
import { usualLengthS, type WorldOutcome, type WorldSetup } from './world-setup.ts';

/** How often the person looks whether a run is under way, and the world at the whole record [steps]. */
const looksEvery = 10;
/** How often somebody looks, while the disk answers nothing, at what needs none [steps]. */
const asksEvery = 8;
const auditsEvery = 1200;
const warmthEvery = 120;
/** A fault may be there before the run. */
const mostTries = 240;
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
  const { time, isOn, isAway, disk, hold, lines, still, source, settings } = bench;
  const files = plantInFiles(bench, planted);
  const judge = createJudge(time.nowS);
  const keepsWarm = faults.some(({ kind }) => kind === 'ferments-are-written-down');

  const told = createTrace();
  const trace = (name: string, body: unknown) =>
    told.add(`${time.nowS()} ${name} ${JSON.stringify(body)}\n`);

  let program: Program | null = null;
  let concluded: Snapshot | null = null;
  let headHeardS = Number.NEGATIVE_INFINITY;
  let heatOffS: number | null = null;
  const asking = createAsking({
    time,
    judge,
    program: () => program,
    isHeld: hold.isHeld,
    meanwhile() {
      if (program === null || life.runningSinceS() === null) return;
      windows.step(program.session);
      checkStep();
    },
  });
  const { ask, wait } = asking;
  const { monotonicS: clockS } = time.computer.clock;
  const runs = createWorldRuns({
    judge,
    ...asking,
    session: () => program?.session ?? null,
    clockS,
    files,
    disk: disk.elsewhere,
    isAway,
    isHeld: hold.isHeld,
    planted,
  });

  const { wallMs } = time.computer.clock;
  const warmth = createWarmthBook({ judge, ask, wallMs, isOn });

  async function start(): Promise<void> {
    program = await wait(
      startProgram({
        time,
        files,
        lines,
        planted,
        holdsFolder() {
          // Who had it before it vanished has it when it is back: nobody else could take it.
          if (isAway()) return null;
          return !isOn('folder-is-taken') && !(planted === 'stays-shut' && runs.all.length > 0);
        },
        hasDesk: faults.some(({ kind }) => kind === 'desk-is-killed'),
        isBeginning: runs.isBeginning,
        onFailedInside: (found) => judge.violated('no-request-fails-inside', found),
        onReadings(readings) {
          if (readings.some(({ channel }) => channel === 'head')) headHeardS = time.nowS();
          runs.hear(readings);
          warmth.hear(readings);
        },
        onMonitor: runs.beginWith,
        onConcluded(snapshot) {
          concluded = snapshot;
        },
      }),
    );
    if (program === null) return;
    const { session } = program;
    session.on('inputs', (body) => {
      runs.tell(body.inputs);
      trace('inputs', body);
    });
    session.on('recording', (status) => {
      // Of a run that is over nothing is due any more.
      if (status.state === 'idle' || status.endedS !== undefined) concluded = null;
      runs.told(status);
      trace('recording', status);
    });
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
    runsOver: () => runs.all.filter(({ isOver }) => isOver).map(({ runId }) => runId),
    runNow() {
      const now = runs.now();
      return now === null || now.runId === '' ? null : now;
    },
  });

  /** What was said to be kept stands in the books, of this program and of the next. */
  async function checkKept(): Promise<void> {
    if (hold.isHeld()) return;
    await wait(colleague.rest());
    // The ferment of a folder that another has is kept warm there.
    if (isAway() || program?.holdsFolder() !== true) return;
    let isWhole = true;
    const look: Look = async (name, body) => {
      const answer = await ask(name, body);
      if (answer.ok) return answer.value;
      if (isAway()) isWhole = false;
      else judge.violated('program-comes-back', `${name}: ${JSON.stringify(answer.error)}.`);
      return null;
    };
    const found = await findKept(look);
    if (isWhole) kept.check(judge, found);
    if (keepsWarm) await warmth.check();
  }

  async function ended(how: 'power-cut' | 'program-killed'): Promise<void> {
    windows.close();
    const status = program?.session.recordingStatus() ?? null;
    program = null;
    concluded = null;
    warmth.cutOff();
    hold.forget(random.fork(`held ${time.nowS()}`));
    await runs.cutOff(how, status);
  }

  /** The person goes on with a run that was cut off, or begins one. */
  async function takeUp(): Promise<void> {
    if (program === null || isOn('person-stops-the-run') || rehearsal.isHeld()) return;
    if (runs.isStopping()) return;
    if (program.session.recordingStatus().runId !== null) return;
    await wait(colleague.rest());
    if (await runs.goOn()) return;
    await runs.begin(async () => {
      const connected = await ask('probe/connect', { source });
      if (!connected.ok) return false;
      const started = await ask('run/start', { settings });
      if (!started.ok && isAway()) lostFolder.refused(started.error);
      return started.ok;
    });
  }

  const person = createPerson({
    ask,
    still,
    source,
    random: random.fork('person'),
    isOn,
    isRehearsing: () => rehearsal.isHeld(),
    concluded: () => concluded,
    marked: (markId) => void runs.now()?.marks.push(markId),
    nowS: time.nowS,
    answered: (name, tookS) => heldDisk.answered(name, tookS),
  });
  const rehearsal = createRehearsal({
    ...asking,
    bench,
    judge,
    random: random.fork('rehearsal'),
    runs,
    person,
    program: () => program,
    rest: colleague.rest,
  });
  const life = createComputerLife({
    bench,
    random,
    program: () => program,
    ended,
    start,
    wait,
  });
  const begin = createSuddenFaults({
    ...asking,
    bench,
    random: random.fork('sudden'),
    judge,
    planted,
    runs,
    person,
    desk: () => program?.desk ?? null,
    isRunning: () => program !== null && time.computer.isRunning(),
  });
  const check = createStepChecks(judge);
  const lostFolder = createLostFolderCheck(judge);
  const heldDisk = createHeldDiskCheck({ judge, ask, nowS: time.nowS });

  function checkStep(): void {
    const nowS = time.nowS();
    const runningSinceS = life.runningSinceS();
    const book = runs.now();
    const inTurn = runningSinceS === null ? null : program;
    lostFolder.see({ nowS, isAway: isAway(), program: inTurn, book });
    const heldSinceS = hold.heldSinceS();
    heldDisk.see({ nowS, heldSinceS, runningSinceS, book, windows: windows.all });
    const dueS = check({
      nowS,
      runningSinceS,
      program,
      book,
      windows: windows.all,
      concluded,
      headHeardS,
      waitsForDisk: hold.waiting(),
    });
    heatOffS ??= dueS;
  }

  const begun = new Set<Fault>();
  await start();
  await time.pass(3);
  for (let tries = 0; runs.now() === null && tries < mostTries; tries += 1) {
    await takeUp();
    await time.pass(stepS);
  }
  const beginsS = time.nowS();
  if (runs.now() === null) throw new Error(`Seed ${setup.seed}: the run does not begin.`);

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
      await rehearsal.step();
      colleague.step();
      await runs.step();
      const { runId } = (program as Program).session.recordingStatus();
      if (hold.isHeld() && step % asksEvery === 0 && runId !== null) {
        await heldDisk.askWhatNeedsNoDisk(runId);
      }
      if (step % looksEvery === 0) await takeUp();
      if (keepsWarm && step % warmthEvery === 0 && !isAway() && !hold.isHeld())
        await warmth.check();
      if (step % auditsEvery === 0 && !hold.isHeld()) {
        await runs.audit();
        await checkKept();
      }
    }
    checkStep();
  }
  if (judge.violation() === null) await checkEnd();
  return {
    faults,
    simulatedS: Math.round(time.nowS() * 1000) / 1000,
    traceHash: told.digest(),
    heatOffS,
    runs: runs.all.length,
    violation: judge.violation(),
  };

  async function checkEnd(): Promise<void> {
    const state = program?.hub.status().state;
    const heardAgoS = time.nowS() - headHeardS;
    if (state !== 'hearing' || heardAgoS > heardWithinS) {
      judge.violated('program-comes-back', `The probe is ${state}, heard ${heardAgoS} s ago.`);
    }
    const recorder = program?.session.recordingStatus();
    const unsavedS = (runs.now()?.told.at(-1)?.timeS ?? 0) - (recorder?.savedToS ?? 0);
    if (recorder?.state !== 'recording' || unsavedS > savedWithinS) {
      judge.violated('program-comes-back', `${recorder?.state}, ${unsavedS} s not saved.`);
    }
    await runs.checkAllSaved();
    if ((setup.end ?? drawnEnd) === 'clean') await runs.stop();
    else {
      program?.kill();
      disk.cutPower(random.fork('power'));
      await ended('power-cut');
      await start();
      await takeUp();
      const { state: again } = (program as Program | null)?.session.recordingStatus() ?? {};
      if (again !== 'recording') judge.violated('program-comes-back', `After the cut: ${again}.`);
      await runs.stop();
    }
    await runs.checkLibrary();
    await checkKept();
    if (program !== null) await wait(program.session.close());
  }
}
