/**
 * Builds what is stale and opens the app: the desktop shell where it can run, the browser elsewhere.
 *
 * Usage: npm start -- --help
 */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { defaultRunsFolder } from '../app/default-runs-folder.ts';
import { knownFoldersFile } from '../app/known-folders-file.ts';
import { buildIfStale } from './building/build-if-stale.ts';
import {
  electronTarget,
  loopbackDeskProgram,
  loopbackProbeProgram,
  loopbackProgram,
  loopbackTarget,
  projectRoot,
  windowFolder,
  windowTarget,
} from './building/build-targets.ts';
import { chooseShell } from './starting/choose-shell.ts';
import { programVersion } from './starting/program-version.ts';
import { provideElectron } from './starting/provide-electron.ts';
import { runElectron } from './starting/start-electron.ts';
import { parseStartOptions, type StartOptions, startUsage } from './starting/start-options.ts';

/** What is left to be done by what was built. */
export let untranslated: (() => Promise<void>) | undefined;

const options = parseStartOptions(process.argv.slice(2));
if (!options.ok) {
  console.error(`${options.error}\n\n${startUsage}`);
  process.exitCode = 2;
} else if (options.value.help) {
  console.log(startUsage);
} else {
  await start(options.value);
}

async function start(options: StartOptions): Promise<void> {
  const runsFolder = path.resolve(options.runsFolder ?? usualRunsFolder());
  await build(windowTarget);
  if (await startedDesktopShell(options, runsFolder)) return;
  await build(loopbackTarget);
  untranslated = () => startLoopbackShell(options, runsFolder);
}

async function startLoopbackShell({ open, port }: StartOptions, runsFolder: string): Promise<void> {
  const { runLoopback }: typeof import('../app/loopback/run-loopback.ts') = await import(
    pathToFileURL(loopbackProgram).href
  );
  const started = await runLoopback({
    version: programVersion(),
    windowFolder,
    runsFolder,
    knownFoldersFile: knownFoldersFile({
      platform: process.platform,
      homeFolder: homedir(),
      stateHome: process.env.XDG_STATE_HOME,
      localAppData: process.env.LOCALAPPDATA,
      runsFolder,
      usualRunsFolder: usualRunsFolder(),
    }),
    port,
    open,
    probeProgram: pathToFileURL(loopbackProbeProgram),
    deskProgram: pathToFileURL(loopbackDeskProgram),
  });
  process.exitCode = started ? 0 : 1;
}

async function startedDesktopShell(options: StartOptions, runsFolder: string): Promise<boolean> {
  const choice = chooseShell({
    wantsBrowser: options.browser,
    opensWindow: options.open,
    nodeVersion: process.versions.node,
    platform: process.platform,
    hasDisplay: Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY),
    isRoot: process.getuid?.() === 0,
  });
  if (choice.shell === 'loopback') {
    if (choice.because !== null) say(choice.because);
    return false;
  }
  const program = await provideElectron(projectRoot, say);
  if (program === null) {
    say('The desktop window could not be fetched, so the window opens in your browser.');
    return false;
  }
  await build(electronTarget);
  const programArguments = [`--runs-folder=${runsFolder}`];
  const nowMs = () => performance.now();
  if (await runElectron({ program, programArguments, projectRoot, nowMs })) return true;
  say('The desktop window could not start, so the window opens in your browser.');
  return false;
}

function build(target: typeof windowTarget): Promise<boolean> {
  return buildIfStale(target, { root: projectRoot, report: say });
}

function usualRunsFolder(): string {
  return defaultRunsFolder({
    platform: process.platform,
    homeFolder: homedir(),
    dataHome: process.env.XDG_DATA_HOME,
    folderExists: existsSync,
  });
}

function say(line: string): void {
  console.error(line);
}
