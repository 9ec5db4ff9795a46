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
import { composeServices } from '../compose-services.ts';
import { appScheme, appStartAddress } from './app-address.ts';
import { externalPages } from './external-pages.ts';
import { runsFolderFrom } from './runs-folder-argument.ts';
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
import { utilityProbeWorker } from './utility-probe-worker.ts';
import { windowOptions } from './window-options.ts';

const buildFolder = import.meta.dirname;
const windowFolder = path.join(buildFolder, '..', 'renderer');

app.enableSandbox();
protocol.registerSchemesAsPrivileged([
  { scheme: appScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);

// Two programs writing one run library would spoil it, so the lock comes before the library.
if (app.requestSingleInstanceLock()) void app.whenReady().then(openApp);
else app.quit();

async function openApp(): Promise<void> {
  const session = await composeServices({
    shell: 'electron',
    version: app.getVersion(),
    startWorker: () => utilityProbeWorker(utilityProcess.fork(path.join(buildFolder, 'probe.mjs'))),
    runsFolder: runsFolderFrom(process.argv, app.getPath('documents')),
  });

  protocol.handle(appScheme, (request) => answerAppRequest(request, windowFolder));
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
  setupIpc({ ipcMain, services: session, window, secondScreen });
  setupReload({
    contents: window.webContents,
    nowMs: Date.now,
    giveUp: () =>
      dialog.showErrorBox(
        'The window keeps failing',
        'Recording goes on. Look at the thermometer; close and reopen this program after the run.',
      ),
  });
  setupKeepAwake(session, powerSaveBlocker);
  setupSleep(powerMonitor, session);
  setupQuit(app, () => session.close());
  app.on('second-instance', () => {
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  window.once('ready-to-show', () => window.show());
  await window.loadURL(appStartAddress);
}
