/** The desktop shell: reads as a list of what is set up, each part in a file of its own. */
import path from 'node:path';
import {
  app,
  BrowserWindow,
  dialog,
  session as electronSession,
  ipcMain,
  Menu,
  powerMonitor,
  powerSaveBlocker,
  protocol,
  screen,
  shell,
  utilityProcess,
} from 'electron';
import { createClassViewDoor } from '../class-view/index.ts';
import { composeServices } from '../compose-services.ts';
import { usualEndPatience } from '../end-patience.ts';
import { createWindowFiles } from '../files/index.ts';
import { isAnythingAtStake, whatQuittingLoses } from '../what-quitting-loses.ts';
import { appScheme, appStartAddress } from './app-address.ts';
import { externalPages } from './external-pages.ts';
import { failedStartDeps, sayWhyNot } from './failed-start.ts';
import { keptFolders } from './kept-folders.ts';
import { createSecondScreenWindow, secondScreenPlace } from './second-screen-window.ts';
import { answerAppRequest } from './serve-app-protocol.ts';
import { setupIpc } from './setup-ipc.ts';
import { setupKeepAwake } from './setup-keep-awake.ts';
import { menuTemplate } from './setup-menu.ts';
import { setupNavigation } from './setup-navigation.ts';
import { setupPermissions } from './setup-permissions.ts';
import { setupQuit } from './setup-quit.ts';
import { setupReload } from './setup-reload.ts';
import { setupSleep } from './setup-sleep.ts';
import { utilitySideProcess } from './utility-side-process.ts';
import { windowOptions } from './window-options.ts';

const buildFolder = import.meta.dirname;
const windowFiles = createWindowFiles(path.join(buildFolder, '..', 'renderer'));

app.enableSandbox();
protocol.registerSchemesAsPrivileged([
  { scheme: appScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);

// Two programs writing one run library would spoil it, so the lock comes before the library.
if (app.requestSingleInstanceLock()) void app.whenReady().then(openApp).catch(couldNotStart);
else app.quit();

const sideProcess = (fileName: string) =>
  utilitySideProcess(utilityProcess.fork(path.join(buildFolder, fileName)));

async function openApp(): Promise<void> {
  const session = await composeServices({
    shell: 'electron',
    version: app.getVersion(),
    startWorker: () => sideProcess('probe.mjs'),
    startDesk: () => sideProcess('desk.mjs'),
    ...keptFolders(app),
  });
  const isRecording = () => session.recordingStatus().state !== 'idle';

  protocol.handle(appScheme, (request) => answerAppRequest(request, windowFiles));
  setupPermissions(electronSession.defaultSession);
  app.on('web-contents-created', (_event, contents) => setupNavigation(contents));
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(
      menuTemplate(process.platform, (page) => void shell.openExternal(externalPages[page])),
    ),
  );

  const options = windowOptions(path.join(buildFolder, 'preload.cjs'));
  const window = new BrowserWindow(options);
  const secondScreen = createSecondScreenWindow(() => {
    const here = screen.getDisplayMatching(window.getBounds());
    const viewer = new BrowserWindow({
      ...options,
      ...secondScreenPlace(screen.getAllDisplays(), here),
    });
    setupReload({ contents: viewer.webContents, nowMs: Date.now, giveUp: () => viewer.close() });
    viewer.once('ready-to-show', () => viewer.show());
    void viewer.loadURL(appStartAddress);
    return viewer;
  });
  // Without the window that commands there is nothing to watch for.
  window.on('closed', () => secondScreen.current()?.close());
  const classView = createClassViewDoor({ services: session, windowFiles });
  setupIpc({ ipcMain, services: session, window, secondScreen, classView });
  setupReload({
    contents: window.webContents,
    nowMs: Date.now,
    // Never a box that blocks: the recorder lives in this process.
    giveUp: () =>
      void dialog.showMessageBox({
        type: 'error',
        message: 'The window keeps failing.',
        detail: isRecording()
          ? 'The run goes on being recorded. Look at the thermometer; close and reopen this program after the run.'
          : 'Close and reopen this program.',
      }),
  });
  setupKeepAwake(session, powerSaveBlocker);
  setupSleep(powerMonitor, session);
  setupQuit({
    app,
    window,
    isAnythingAtStake: () => isAnythingAtStake(session.recordingStatus()),
    askToEnd: async () => {
      const asked = await dialog.showMessageBox(window, {
        type: 'question',
        message: `${whatQuittingLoses(session.recordingStatus())} Quit all the same?`,
        buttons: isRecording()
          ? ['Go on recording', 'End the run and quit']
          : ['Leave the program open', 'Quit and lose it'],
        defaultId: 0,
        cancelId: 0,
      });
      return asked.response === 1;
    },
    close: async () => {
      await Promise.all([classView.shut(), session.close()]);
    },
    patience: usualEndPatience,
  });
  app.on('second-instance', () => {
    if (window.isDestroyed()) return;
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  window.once('ready-to-show', () => window.show());
  await window.loadURL(appStartAddress);
}

function couldNotStart(error: unknown): Promise<void> {
  return sayWhyNot(error, failedStartDeps(app, dialog, keptFolders(app).runsFolder));
}
