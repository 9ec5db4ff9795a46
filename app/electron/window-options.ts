import type { BrowserWindowConstructorOptions } from 'electron';

/**
 * The window of the desktop shell. Every flag of the Electron security checklist is written out, defaults
 * included, so that a changed default cannot open a door unseen.
 */
export function windowOptions(preloadFile: string): BrowserWindowConstructorOptions {
  return {
    title: 'Still Head Monitor',
    width: 1280,
    height: 800,
    minWidth: 360,
    minHeight: 480,
    show: false,
    autoHideMenuBar: true,
    webPreferences: {
      preload: preloadFile,
      contextIsolation: true,
      sandbox: true,
      webSecurity: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      enableBlinkFeatures: '',
      webviewTag: false,
      navigateOnDragDrop: false,
      safeDialogs: true,
      spellcheck: false,
      // A covered window must keep its clock and its alarm sound.
      backgroundThrottling: false,
    },
  };
}
