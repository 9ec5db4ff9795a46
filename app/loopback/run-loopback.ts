import { randomBytes } from 'node:crypto';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { forkDesk, forkProbeWorker } from '#main';
import { assertNever, clockWords, type EventBody } from '#shared-core';
import { createClassViewDoor } from '../class-view/index.ts';
import { composeServices } from '../compose-services.ts';
import { untilOutOfPatience, usualEndPatience } from '../end-patience.ts';
import { createWindowFiles } from '../files/index.ts';
import { isAnythingAtStake, whatQuittingLoses } from '../what-quitting-loses.ts';
import { doorFileIn, readDoorFile, removeDoorFile, writeDoorFile } from './door-file.ts';
import { createEndQuestion } from './end-question.ts';
import { isDoorOpen } from './is-door-open.ts';
import { awakeCommand, keepAwake } from './keep-awake.ts';
import { openBrowser } from './open-browser.ts';
import { type Loopback, type LoopbackProblem, startLoopback } from './start-loopback.ts';
import { untilToldToStop } from './until-told-to-stop.ts';

export interface LoopbackRun {
  readonly version: string;
  readonly windowFolder: string;
  readonly runsFolder: string;
  /** Where this computer keeps which folders of runs have been there; see {@link knownFoldersFile}. */
  readonly knownFoldersFile?: string | undefined;
  readonly port: number;
  /** Open the browser by itself. */
  readonly open: boolean;
  /** The built process that reads serial ports; from its source where there is none. */
  readonly probeProgram?: URL;
  /** The built process that goes through whole runs, likewise. */
  readonly deskProgram?: URL;
}

/** Runs the loopback shell until it is told to stop. True when it could start. */
export async function runLoopback(run: LoopbackRun): Promise<boolean> {
  if (run.open && (await openRunningOne(run.runsFolder))) return true;
  const session = await composeServices({
    ...run,
    shell: 'loopback',
    startWorker: () => forkProbeWorker(run.probeProgram),
    startDesk: () => forkDesk(run.deskProgram),
  });
  const windowFiles = createWindowFiles(run.windowFolder);
  const classView = createClassViewDoor({ services: session, windowFiles });
  const started = await startLoopback({
    services: session,
    classView,
    windowFiles,
    port: run.port,
    randomToken: () => randomBytes(24).toString('base64url'),
  });
  if (!started.ok) {
    console.error(problemSentence(started.error));
    await session.close();
    return false;
  }
  const loopback = started.value;
  // Before anything is said: whoever reads it may stop the program at once.
  const toldToStop = untilToldToStop(process, {
    asksFirst: createEndQuestion({
      whatIsLost: () => whatQuittingLoses(session.recordingStatus()),
      isPersonThere: process.stdin.isTTY === true,
      say: (line) => console.log(line),
      nowMs: () => performance.now(),
    }),
    again: endNow,
  });
  const url = loopback.issueUrl();
  console.log(`Still Head Monitor: ${url}`);
  console.log(`A second screen that only watches: ${loopback.viewerUrl}`);
  console.log(`Runs are kept in ${run.runsFolder}`);
  const doorFile = await writeDoorFile(run.runsFolder, loopback.door);
  if (run.open) await openOrSay(doorFile);
  const stopListening = offerNewWindow(loopback, doorFile);
  const letSleep = keepAwake(session, awakeCommand(process.platform));
  await toldToStop;
  console.log('Stopping …');
  const isSaving = () => isAnythingAtStake(session.recordingStatus());
  void untilOutOfPatience({
    ...usualEndPatience,
    isSaving,
    onSaving: () => console.log(savingWords(session.recordingStatus())),
  }).then(endNow);
  stopListening();
  letSleep();
  // The window first: it then sees the end as a goodbye, not as a failure of the services.
  const goodbye = Promise.all([
    loopback.close(),
    classView.shut(),
    // A disk that is asleep holds this as well, and the run ends now.
    removeDoorFile(run.runsFolder, loopback.door),
  ]);
  await session.close();
  await goodbye;
  const lost = whatQuittingLoses(session.recordingStatus());
  if (lost !== '') console.error(lost);
  return true;
}

/** What of a run is waited for before the program ends, and what comes of not waiting. */
function savingWords({ savedToS, notSaved }: EventBody<'recording'>): string {
  const savedTo = clockWords(savedToS ?? notSaved?.[0]?.savedToS ?? 0);
  return `The disk has taken the run only up to ${savedTo}. Waiting for the rest of it; Ctrl+C once more ends at once, and the rest is lost.`;
}

/** A system call that never returns keeps even `process.exit` waiting. */
function endNow(): void {
  process.kill(process.pid, 'SIGKILL');
}

/** Who starts the program a second time wants the window of the first, and the run under way in it. */
async function openRunningOne(runsFolder: string): Promise<boolean> {
  const door = await readDoorFile(runsFolder);
  if (door === null || !(await isDoorOpen(door))) return false;
  const file = doorFileIn(runsFolder);
  console.log('Still Head Monitor is running already. Its window opens again.');
  if (!(await openBrowser(process.platform, file))) {
    console.log(`No browser could be opened here. Open ${file} in one on this computer.`);
  }
  return true;
}

async function openOrSay(doorFile: string | null): Promise<void> {
  if (doorFile !== null && (await openBrowser(process.platform, doorFile))) return;
  console.log('No browser could be opened here. Open the address above in one on this computer.');
}

/** The address works once, so a closed window needs a new one: the door file gives it, and so does Enter. */
function offerNewWindow(loopback: Loopback, doorFile: string | null): () => void {
  if (doorFile !== null) console.log(`Window closed? Open ${doorFile} for a new one.`);
  if (!process.stdin.isTTY) return () => {};
  console.log('Pressing Enter here opens one too. Ctrl+C stops the program.');
  const lines = createInterface({ input: process.stdin });
  lines.on('line', () => {
    const url = loopback.issueUrl();
    console.log(`Still Head Monitor: ${url}`);
    void openOrSay(doorFile);
  });
  return () => lines.close();
}

function problemSentence(problem: LoopbackProblem): string {
  switch (problem.kind) {
    case 'port-taken':
      return `Port ${problem.port} is in use. Leave --port out, or choose another one.`;
    case 'cannot-listen':
      return `The window cannot be served on port ${problem.port}: ${problem.message}.`;
    default:
      return assertNever(problem);
  }
}
